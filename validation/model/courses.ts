/** Medians of the outlook of a case, with and without a lever, near and far. */
import { type Day, simulate, timeline } from '@holdfast/ecosystem'
import { type Past, resampled as systematic, weightedQuantiles } from '@holdfast/inference'
import { waterVolume } from '../answers/answer.ts'
import type { CaseFile } from '../case-file.ts'
import { poured, routineAt } from '../husbandry.ts'
import type { Course, Lever, Move } from '../model-answers.ts'
import { presentOf } from './past-of-case.ts'

interface Read {
  readonly of: Course | 'cover'
  readonly surface?: string
  readonly algae?: string
}

/** Members that carry the weight of all, for runs of years. */
const fewMembers = 24
/** Times the water is renewed until it is taken to have levelled off: what is left is e^-6. */
const renewals = 6
const longest = 3000

/** Medians on days after asof, in the unit of the reading. */
export function medians(
  file: CaseFile,
  read: Read,
  days: readonly number[],
  lever?: Lever,
): readonly number[] {
  const { known, question } = presentOf(file)
  const courses = run(known, question, read, days, lever)
  return days.map((_, at) =>
    median(
      courses.map((course) => course[at] ?? Number.NaN),
      known.weights.of,
    ),
  )
}

/**
 * Median level now, and the median of how far each member moves from its own in so many days: a difference of
 * medians would tell as much of which members are in the middle as of where they go. A level is the mean over one
 * interval of the routine, so that the saw-tooth of changes is no trend.
 */
export function move(file: CaseFile, of: Course, days: number): Move {
  const { known, question } = presentOf(file)
  const interval = Math.min(30, Math.max(1, Math.round(routineAt(file, file.asof)?.every_days ?? 1)))
  const span = Array.from({ length: interval }, (_, day) => day)
  const courses = run(known, question, { of }, [...span, ...span.map((day) => day + days)])
  const levels = courses.map((course) => ({
    start: mean(course.slice(0, interval)),
    end: mean(course.slice(interval)),
  }))
  const weighed = (values: readonly number[]) => median(values, known.weights.of)
  return {
    start: weighed(levels.map(({ start }) => start)),
    change: weighed(levels.map(({ start, end }) => end - start)),
  }
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length

/** mg/L NO3 before and after a change when husbandry has gone on until nothing moves any more. */
export function equilibrium(
  file: CaseFile,
  lever?: Lever,
): { readonly before: number; readonly after: number } {
  const { known, question } = presentOf(file)
  const routine = routineAt(file, file.asof)
  const fraction = routine === undefined ? 0 : routine.volume_L / waterVolume(file)
  const interval = routine?.every_days ?? 1
  const horizon =
    fraction === 0 ? longest : Math.min(longest, Math.max(180, (renewals * interval) / fraction))
  const few = resampled(known)
  // A whole interval, of which the noon before the change stands highest.
  const days = Array.from({ length: Math.ceil(interval) + 1 }, (_, day) => Math.ceil(horizon) + day)
  const courses = run(few, question, { of: 'nitrate' }, days, lever)
  const peaks = courses.map((course) => Math.max(...course))
  const before = median(peaks, few.weights.of)
  const newWater = poured(file, 'source water + salt').NO3_mg_L
  return { before, after: before - fraction * (before - newWater) }
}

function run(
  known: Past,
  question: ReturnType<typeof presentOf>['question'],
  read: Read,
  days: readonly number[],
  lever?: Lever,
): readonly (readonly number[])[] {
  const { model } = known
  const { asOf } = question
  const to = asOf + Math.max(...days) + 1
  const samples: readonly Day[] = days.map((day) => asOf + day)
  const moments = timeline({
    ...question,
    system: model.system,
    from: asOf,
    to,
    ...(lever === undefined ? {} : { change: { from: asOf, ...changeOf(lever) } }),
  })
  const seen = known.seen.find(
    (one) => one.quantity === read.of && one.surface === read.surface && one.algae === read.algae,
  )
  if (seen === undefined) return known.members.map(() => days.map(() => Number.NaN))
  return known.members.map(({ parameters, states, settings }) =>
    simulate({
      model,
      parameters,
      start: states,
      settings,
      from: asOf,
      to,
      samples,
      timeline: moments,
    }).samples.map((sample) => seen.of(sample, parameters)),
  )
}

function changeOf({ lever, factor }: Lever) {
  if (lever === 'feed') return { feedFactor: factor }
  return lever === 'foam_rate' ? { foamFactor: factor } : { carbonFactor: factor }
}

export function median(values: readonly number[], weights: readonly number[]): number {
  return weightedQuantiles(values, weights, [0.5])[0] ?? Number.NaN
}

/** A few members that stand for all, for runs of years. */
export const resampled = (known: Past): Past => systematic(known, fewMembers)
