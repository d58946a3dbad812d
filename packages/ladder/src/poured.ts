import { highOnes } from './causes/inputs.ts'
import type { Standing } from './standing.ts'

/** New water with more than half of what the band allows at most does not thin the tank by much. */
const loadedFrom = 0.5

/** Why a change with this new water does not bring down what stands too high; undefined where it does. */
export function poured(standing: Standing): string | undefined {
  const { source_water, salt_mix } = standing.system
  const loaded = highOnes(standing).filter((of) => {
    const key = of === 'nitrate' ? 'NO3_mg_L' : 'PO4_mg_L'
    return (source_water[key] ?? 0) + (salt_mix[key] ?? 0) > loadedFrom * standing.levels[of].high
  })
  return loaded.length === 0
    ? undefined
    : `The new water itself carries ${loaded.join(' and ')}: a change brings it in again.`
}
