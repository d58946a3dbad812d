import type { Day, Event } from '@holdfast/ecosystem'
import { isCured, renewed } from './curing.ts'
import type { Limits } from './limits.ts'
import { nitrogenOfSalt } from './log.ts'
import type { RunOn, World } from './run-on.ts'

/** What the log has shown already. */
export interface ShownAlready {
  /** Ammonia reads nothing since. */
  readonly quietSince?: Day
  /** A dose of ammonia was gone in time, or none is asked. */
  readonly challenged: boolean
  /** Ammonia and nitrite read as the first animals need it. */
  readonly settled: boolean
}

export interface Plan {
  readonly limits: Limits
  /** mg/L N that the dose adds which tries the bacteria. */
  readonly dose: number
  /** Share of the water in a change. */
  readonly change: number
  readonly until: Day
}

const week = 7

/**
 * The day from which the first animals may come in one world: ammonia and nitrite have gone, the rock gives off
 * next to nothing, nitrate and phosphate are under their limits, a dose of ammonia has gone in time, and ammonia
 * has read nothing for the days that are asked; whichever comes last. Until the rock is cured a part of the water
 * is changed each week.
 *
 * @returns Infinity where that day does not come in time
 */
export function readyDay(run: RunOn, plan: Plan, today: World, shown: ShownAlready): Day {
  const { limits } = plan
  const settled = settledAfter(run, plan, today, shown.settled)
  if (settled === undefined) return Number.POSITIVE_INFINITY
  const cured = curedAfter(run, plan, settled)
  if (cured === undefined) return Number.POSITIVE_INFINITY
  const proved = shown.challenged ? cured : provedAfter(run, plan, cured)
  if (proved === undefined) return Number.POSITIVE_INFINITY
  return Math.max(proved.day, (shown.quietSince ?? settled.day) + limits.quiet.value)
}

const calm = ({ read }: RunOn, { limits }: Plan, world: World): boolean =>
  read('ammonia', world) <= limits.ammonia.value && read('nitrite', world) <= limits.nitrite.value

/** The first world in which neither ammonia nor nitrite is left; readings decide for today. */
function settledAfter(run: RunOn, plan: Plan, today: World, already: boolean): World | undefined {
  if (already) return today
  let world = today
  while (world.day < plan.until) {
    const days = run.days(world, week)
    const found = days.find((one) => calm(run, plan, one))
    if (found !== undefined) return found
    world = days[week - 1]
  }
  return undefined
}

function curedAfter(run: RunOn, plan: Plan, settled: World): World | undefined {
  const { limits } = plan
  let world = settled
  while (world.day < plan.until) {
    const low =
      run.read('nitrate', world) <= limits.nitrate.value &&
      run.read('phosphate', world) <= limits.phosphate.value
    if (low && isCured(run, limits, world)) return world
    world = run.days(world, week, [renewed(run, world, plan.change)])[week - 1]
  }
  return undefined
}

/** Doses ammonia, and again a week later, until it is gone in time. */
function provedAfter(run: RunOn, plan: Plan, cured: World): World | undefined {
  const { limits, dose } = plan
  let world = cured
  while (world.day < plan.until) {
    const salt: Event = {
      day: world.day,
      kind: 'dose',
      substance: 'ammonium chloride',
      mass_g: (dose * run.model.volume_L) / nitrogenOfSalt,
    }
    const days = run.days(world, week, [salt])
    const gone = days
      .slice(0, limits.challengeDays.value)
      .some((one) => run.read('ammonia', one) <= limits.ammonia.value)
    const proved = gone ? days.find((one) => calm(run, plan, one)) : undefined
    if (proved !== undefined) return proved
    world = days[week - 1]
  }
  return undefined
}
