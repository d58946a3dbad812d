import type { Day, Event } from '@holdfast/ecosystem'
import { isCured, leaches, renewed } from './curing.ts'
import type { Limits } from './limits.ts'
import { saltFor } from './log.ts'
import type { RunOn, World } from './run-on.ts'

/** What the log has shown already. */
export interface ShownAlready {
  /** Day since which ammonia reads nothing. */
  readonly quietSince: Day | undefined
  /** A dose of ammonia was gone in time, or none is asked. */
  readonly challenged: boolean
}

/** What is done until the first animals may come. */
export interface Plan {
  readonly limits: Limits
  /** mg/L N that a dose adds which tries the bacteria. */
  readonly dose: number
  /** Share of the water in a change. */
  readonly change: number
  /** Ferric media while rock gives off phosphate, g per L of water. */
  readonly media: number
  readonly until: Day
}

const week = 7
/** Ferric media are renewed after so many changes. */
const changesOfMedia = 4

/**
 * The day from which the first animals may come in one world. Ammonia goes; while rock gives something off or
 * nitrate or phosphate is above its limit, water is changed every week and media take phosphate; ammonia is dosed,
 * again whenever it has gone, until it goes in time; then neither ammonia nor nitrite is left, and ammonia has read
 * nothing for the days that are asked.
 *
 * @returns Infinity where that day does not come in time
 */
export function readyDay(run: RunOn, plan: Plan, today: World, shown: ShownAlready): Day {
  const { limits, until } = plan
  const isGone = (world: World): boolean => run.read('ammonia', world) <= limits.ammonia.value
  const isCalm = (world: World): boolean =>
    isGone(world) && run.read('nitrite', world) <= limits.nitrite.value
  // Where the log says that ammonia has gone, it has gone, whatever a world would have.
  const gone = shown.quietSince === undefined ? first(run, today, until, isGone) : today
  const cured = gone && curedAfter(run, plan, gone)
  const proved = cured && (shown.challenged ? cured : provedAfter(run, plan, cured, isGone))
  const calm = proved && (isCalm(proved) ? proved : first(run, proved, until, isCalm))
  if (gone === undefined || calm === undefined) return Number.POSITIVE_INFINITY
  // Something is still open today, whatever a world would have.
  return Math.max(today.day + 1, calm.day, (shown.quietSince ?? gone.day) + limits.quiet.value)
}

/** The first world after a day of which something holds. */
function first(run: RunOn, start: World, until: Day, holds: (world: World) => boolean): World | undefined {
  let world = start
  while (world.day < until) {
    const days = run.days(world, week)
    const found = days.find(holds)
    if (found !== undefined) return found
    world = days[week - 1]
  }
  return undefined
}

function curedAfter(run: RunOn, plan: Plan, gone: World): World | undefined {
  const { limits, until, change, media } = plan
  let world = gone
  for (let changes = 0; world.day < until; changes++) {
    const isLow =
      run.read('nitrate', world) <= limits.nitrate.value &&
      run.read('phosphate', world) <= limits.phosphate.value
    if (isLow && (!leaches(run) || isCured(run, limits, world))) return world
    const fill: Event = {
      day: world.day,
      kind: 'media placed',
      mass_g: media * run.model.volume_L,
    }
    const due = changes % changesOfMedia === 0
    world = run.days(world, week, [renewed(run, world, change), ...(due ? [fill] : [])])[week - 1]
  }
  return undefined
}

/** Doses ammonia, and again whenever it has gone, until it goes in time. */
function provedAfter(
  run: RunOn,
  { limits, dose, until }: Plan,
  cured: World,
  isGone: (world: World) => boolean,
): World | undefined {
  let world: World | undefined = cured
  while (world !== undefined && world.day < until) {
    const salt: Event = {
      day: world.day,
      kind: 'dose',
      substance: 'ammonium chloride',
      mass_g: saltFor(dose, run.model.volume_L),
    }
    const days: readonly World[] = run.days(world, Math.ceil(limits.challengeDays.value), [salt])
    const inTime = days.find(isGone)
    if (inTime !== undefined) return inTime
    world = first(run, days[days.length - 1], until, isGone)
  }
  return undefined
}
