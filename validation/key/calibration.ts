import { fieldKey, posterior, surest } from '@holdfast/identification'
import type { Check } from '../check.ts'
import { drawsOf } from '../imports/mutate.ts'
import { drawGrowth, type Muddle } from './drawn.ts'
import { type Forecast, reliability } from './reliability.ts'

/** Growths that hang together within and keepers who err: what tempering is for. */
const asInLife: Muddle = { together: 0.5, noise: 0.05 }

const many = 3000
const grain = 1_000_000

/** How sure the key is of its first kind, and whether that was the kind drawn. */
export function forecastsOf(muddle: Muddle, seed: number): readonly Forecast[] {
  const below = drawsOf(seed)
  return Array.from({ length: many }, () => {
    const { answers, kind } = drawGrowth(() => below(grain) / grain, muddle)
    const [first] = posterior(fieldKey, answers)
    return { said: first.chance, was: first.key === kind }
  })
}

/** The key is as sure as it says: of those under the cap within sampling error, and never too sure at it. */
export function isCalibrated(forecasts: readonly Forecast[]): boolean {
  const below = reliability(forecasts.filter(({ said }) => said < surest))
  const atCap = reliability(forecasts.filter(({ said }) => said >= surest))
  return below.every(({ within }) => within) && atCap.every(({ said, was, error }) => was >= said - error)
}

/** One line for `npm run validate`. */
export function keyCalibration(): readonly Check[] {
  const forecasts = forecastsOf(asInLife, 1)
  const rows = reliability(forecasts).map(
    ({ many: so, said, was }) => `${so} said ${said.toFixed(3)} were ${was.toFixed(3)}`,
  )
  return [
    {
      name: 'the field key is as sure as it says, on growths drawn from its table with noise',
      outcome: isCalibrated(forecasts) ? 'passed' : 'failed',
      says: rows.join('; '),
    },
  ]
}
