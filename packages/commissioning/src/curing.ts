import type { Event } from '@holdfast/ecosystem'
import type { Limits } from './limits.ts'
import type { RunOn, World } from './run-on.ts'

/** Salt water mixed with pure water. */
const clean = { NO3_mg_L: 0, PO4_mg_L: 0 }

/** A change of a share of all water into clean sea water on the day of a world. */
export const renewed = ({ model }: RunOn, { day }: World, share: number): Event => ({
  day,
  kind: 'water change',
  volume_L: share * model.volume_L,
  water: clean,
})

/** Whether there is rock that was full of life or of an old tank's phosphate: other rock has nothing to give off. */
export const leaches = ({ model }: RunOn): boolean =>
  model.fluxes.some(({ process }) => process.id.startsWith('leaching'))

/**
 * Whether rock gives off next to nothing: all water is changed, and some dark days later ammonia still reads
 * nothing and nitrate and phosphate have hardly risen. Phosphate in old water stands in balance with the rock, so
 * that a reading of it alone proves nothing.
 */
export function isCured(run: RunOn, limits: Limits, world: World): boolean {
  const later = run.darkDays(world, Math.ceil(limits.curedDays.value), [renewed(run, world, 1)])
  return (
    run.read('ammonia', later) <= limits.ammonia.value &&
    run.read('nitrate', later) <= limits.curedNitrate.value &&
    run.read('phosphate', later) <= limits.curedPhosphate.value
  )
}
