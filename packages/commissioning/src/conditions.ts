import type { Day, Observation } from '@holdfast/ecosystem'
import type { FactsOfSystem } from '@holdfast/facts'
import { readingInterval } from '@holdfast/inference'
import { pH, unIonisedAmmoniaFraction } from '@holdfast/seawater'
import type { Condition, Dissolved, Limit, Shown } from './answer.ts'
import { units } from './courses.ts'
import type { Limits } from './limits.ts'
import { challengeAsked, challengesCleared, halfDay, type Log, quietSince, readingsOf } from './log.ts'

/** pH of a system that does not tell it; on the high side, where more of the ammonia is poisonous. */
const usualPH = 8.3

/** What the log shows on a day; what was not read within the quiet days before it is not shown. */
export function conditionsOn(log: Log, limits: Limits, facts: FactsOfSystem, day: Day): readonly Condition[] {
  const last = (quantity: Dissolved): Observation | undefined =>
    readingsOf(log, quantity, day).findLast((one) => day - one.day <= limits.quiet.value + halfDay)
  const under = (name: Condition['name'], quantity: 'nitrite' | 'nitrate' | 'phosphate'): Condition => {
    const shown = asRead(last(quantity), units[quantity])
    return { name, limits: [limits[quantity]], ...judged(shown, limits[quantity]) }
  }
  const ammonia = last('ammonia')
  return [
    quiet(log, limits, day, ammonia),
    unIonised(log, limits, facts, ammonia),
    under('nitrite_near_nothing', 'nitrite'),
    ...(challengeAsked(log, day) ? [challenge(log, limits, day)] : []),
    under('nitrate_under_limit', 'nitrate'),
    under('phosphate_under_limit', 'phosphate'),
  ]
}

/** Nothing for days: one reading alone does not show a span. */
function quiet(log: Log, limits: Limits, day: Day, last: Observation | undefined): Condition {
  const name = 'ammonia_reads_nothing'
  const of = [limits.ammonia, limits.quiet]
  const shown = asRead(last, units.ammonia)
  if (shown === undefined) return { name, state: 'not read', limits: of }
  const since = quietSince(log, limits, day) ?? Number.POSITIVE_INFINITY
  const seen = readingsOf(log, 'ammonia', day).filter((one) => one.day >= since)
  const holds = seen.length > 1 && day - since >= limits.quiet.value - halfDay
  return { name, state: holds ? 'met' : 'open', limits: of, shown }
}

/** The poisonous part of the most that the reading may stand for. */
function unIonised(log: Log, limits: Limits, facts: FactsOfSystem, last: Observation | undefined): Condition {
  const { pH: told = usualPH, salinity_psu, temperature_C } = log.system
  const part = unIonisedAmmoniaFraction(pH('total', told), salinity_psu, temperature_C)
  const shown = asRead(
    last && { ...last, value: part * readingInterval(last, facts).high },
    limits.unIonised.unit,
  )
  return { name: 'un_ionised_ammonia_low', limits: [limits.unIonised], ...judged(shown, limits.unIonised) }
}

function challenge(log: Log, limits: Limits, day: Day): Condition {
  const cleared = challengesCleared(log, limits, day).at(-1)
  const of = [limits.challenge, limits.challengeDays]
  const name = 'ammonia_challenge_cleared'
  if (cleared === undefined) return { name, state: 'open', limits: of }
  const { day: dosed, rise } = cleared
  return {
    name,
    state: 'met',
    limits: of,
    shown: { value: rise, unit: units.ammonia, day: dosed, by: 'reading' },
  }
}

const judged = (
  shown: Shown | undefined,
  limit: Limit,
): Pick<Condition, 'state'> & Partial<Pick<Condition, 'shown'>> =>
  shown === undefined ? { state: 'not read' } : { state: shown.value <= limit.value ? 'met' : 'open', shown }

const asRead = (reading: Observation | undefined, unit: string): Shown | undefined =>
  reading && {
    value: reading.value,
    unit,
    day: reading.day,
    by: 'reading',
    ...(reading.belowDetection ? { belowDetection: true } : {}),
  }
