import type { Day } from '@holdfast/ecosystem'
import { type OutlookQuestion, type Past, quietly, type Running, resampled } from '@holdfast/inference'
import type { Band, Commissioning, Condition, Dissolved } from './answer.ts'
import { conditionsOn } from './conditions.ts'
import { bandOf, type Courses, courseOf, coursesOf, units } from './courses.ts'
import { isCured, leaches } from './curing.ts'
import { deedsOf } from './deeds.ts'
import { type Limits, limitsOf } from './limits.ts'
import { challengeAsked, challengesCleared, type Log, livingOn, quietSince, saltFor, waterOf } from './log.ts'
import { peakOf } from './peaks.ts'
import { type Plan, readyDay, type ShownAlready } from './ready-day.ts'
import { type RunOn, runOn } from './run-on.ts'
import { readAfterDoses } from './start-up-question.ts'

/** How far the courses are told, and how far ahead is looked for the first animals, days: curing takes long. */
const courseDays = 90
const longest = 365

/** Members that carry the weight of all. */
const fewMembers = 32

/** Weight of the members that must hold for what no reading tells. */
const sure = 0.8

const dissolved: readonly Dissolved[] = ['ammonia', 'nitrite', 'nitrate', 'phosphate']
const nutrients = ['ammonia', 'nitrite', 'nitrate'] as const

/** What no reading tells, and so does not decide. */
const looks: readonly Condition[] = [
  { name: 'salinity_and_temperature_steady', state: 'look', limits: [] },
  { name: 'film_showing', state: 'look', limits: [] },
]

/**
 * How the start-up of a system went and will go on, what stands between it and its first animals, and when they
 * may come. Readings decide where there are any; the model tells what is to come and what no reading shows.
 *
 * @param known  the weighed ensemble of `startUpQuestion`, up to the day on which one looks
 */
export function commissioning(
  known: Past,
  asked: OutlookQuestion,
  running: Running = quietly,
): Commissioning {
  const question = { ...asked, observations: readAfterDoses(asked), horizonDays: courseDays }
  const { asOf, from, system } = question
  const few = resampled(known, fewMembers)
  const { facts } = few.model
  const limits = limitsOf(facts, system.corals?.kind)
  const log: Log = question
  const run = runOn(few, question)
  const courses = coursesOf(few, question)
  const conditions = [
    ...conditionsOn(log, limits, facts, asOf).map((one) => byModel(one, courses, asOf)),
    ...(leaches(run) ? [curing(run, limits, few.weights.of)] : []),
    ...looks,
  ]
  const readyNow = holds(conditions)
  const plan: Plan = {
    limits,
    dose: facts.typical('commissioning.challenge'),
    change: facts.typical('commissioning.change'),
    media: facts.typical('commissioning.media'),
    until: asOf + longest,
  }
  const shown: ShownAlready = {
    quietSince: quietSince(log, limits, asOf),
    challenged: !challengeAsked(log, asOf) || challengesCleared(log, limits, asOf).length > 0,
  }
  const ready = readyNow
    ? alone(readySince(log, limits, few, asOf))
    : inTime(
        run.worlds.map((world, w) => {
          running.onProgress(w / run.worlds.length)
          return readyDay(run, plan, world, shown)
        }),
        few.weights.of,
        plan.until,
      )
  const stocked = livingOn(log, asOf) > 0
  const water = waterOf(system)
  const portions = {
    rise: plan.dose,
    mass_g: saltFor(plan.dose, water),
    change: plan.change,
    media_g: plan.media * water,
  }
  return {
    from,
    asOf,
    until: plan.until,
    courses: dissolved.map((quantity) => courseOf(quantity, courses(quantity))),
    peaks: nutrients
      .map((quantity) => peakOf(log, facts, asOf, quantity, courses(quantity)))
      .sort((a, b) => a.day.middle - b.day.middle),
    conditions,
    readyNow,
    ready,
    stocked,
    ...deedsOf({ conditions, readyNow, stocked, hasCorals: (system.corals?.area_m2 ?? 0) > 0 }, portions),
  }
}

const holds = (conditions: readonly Condition[]): boolean =>
  conditions.every(({ state }) => state === 'met' || state === 'look')

/** What nitrate and phosphate are taken for where nobody read them: an unread ammonia is never taken for none. */
function byModel(condition: Condition, courses: (quantity: Dissolved) => Courses, asOf: Day): Condition {
  const quantity = unread.get(condition.name)
  if (condition.state !== 'not read' || quantity === undefined) return condition
  const { days, of, weights } = courses(quantity)
  const today = days.indexOf(asOf)
  const { middle: value } = bandOf(
    of.map((course) => course[today]),
    weights,
  )
  return {
    ...condition,
    state: value <= condition.limits[0].value ? 'met' : 'open',
    shown: { value, unit: units[quantity], day: asOf, by: 'model' },
  }
}

const unread = new Map<Condition['name'], 'nitrate' | 'phosphate'>([
  ['nitrate_under_limit', 'nitrate'],
  ['phosphate_under_limit', 'phosphate'],
])

/** Whether the rock gives off next to nothing today, by most of the members. */
function curing(run: RunOn, limits: Limits, weights: readonly number[]): Condition {
  const share = run.worlds.reduce((sum, world, w) => sum + (isCured(run, limits, world) ? weights[w] : 0), 0)
  return {
    name: 'rock_cured',
    state: share >= sure ? 'met' : 'open',
    limits: [limits.ammonia, limits.curedNitrate, limits.curedPhosphate, limits.curedDays],
    shown: { value: share, unit: '1', day: run.worlds[0].day, by: 'model' },
  }
}

/** The first day since which the log shows all that it can show. */
function readySince(log: Log, limits: Limits, { model }: Past, asOf: Day): Day {
  const days = [...log.observations, ...log.events]
    .map(({ day }) => day)
    .filter((day) => day <= asOf && day >= log.from)
  const steps = [...new Set([...days, asOf])].sort((a, b) => a - b)
  const not = steps.findLastIndex(
    (day) =>
      !conditionsOn(log, limits, model.facts, day).every(
        ({ name, state }) => state === 'met' || (state === 'not read' && unread.has(name)),
      ),
  )
  return steps[not + 1] ?? asOf
}

/** The band of days; what lies beyond the last day looked at is only known to lie there. */
function inTime(days: readonly Day[], weights: readonly number[], until: Day): Band {
  const within = (day: Day): Day => (day < until ? day : Number.POSITIVE_INFINITY)
  const { low, middle, high } = bandOf(
    days.map((day) => Math.min(day, until)),
    weights,
  )
  return { low: within(low), middle: within(middle), high: within(high) }
}

const alone = (day: Day): Band => ({ low: day, middle: day, high: day })
