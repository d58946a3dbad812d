import type { Present } from '@holdfast/crew-plan'
import type { PlaceWeek } from '@holdfast/ecosystem'
import { weightedQuantiles } from '@holdfast/inference'
import type { Band } from './answer.ts'

/** Of the week that is looked at. */
export const days = 7

/** A band of what a world has, over all worlds. */
export type BandOver = (of: (world: number) => number) => Band

export const bandOver =
  ({ weights }: Present): BandOver =>
  (of) => {
    const values = weights.map((_, world) => of(world))
    const [low, value, high] = weightedQuantiles(values, weights, [0.05, 0.5, 0.95])
    return { low, value, high }
  }

/** What nobody eats of a week's growth, g dry; a stand that is eaten down leaves nothing. */
export const leftAt = ({ growth_g_d, grazed_g_d }: PlaceWeek): number => {
  const eaten = [...grazed_g_d.values()].reduce((sum, grams) => sum + grams, 0)
  return days * Math.max(0, Math.max(0, growth_g_d) - eaten)
}

/** The patch of a stand, as a key. */
export const patchOf = ({ surface, patch }: Pick<PlaceWeek, 'surface' | 'patch'>): string =>
  `${surface} ${patch}`
