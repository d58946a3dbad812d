import { civil, dayOf } from './civil.ts'

/** A date that does not stand where its neighbours run, and what was likely meant. */
export interface DateSlip {
  readonly at: number
  readonly likely?: string
  readonly why: string
}

const fewest = 5
const farDays = 3 * 365

/**
 * Dates of a run that is written in order, but for a few: a year of the far future, a month that was not
 * turned. Where many are out of order the run is in no order, and none is a slip.
 *
 * @param dates  ISO dates, in the order of the sheet
 */
export function dateSlips(dates: readonly string[]): readonly DateSlip[] {
  if (dates.length < fewest) return []
  const days = dates.map(dayOf)
  const ups = days.filter((day, at) => at > 0 && day > (days[at - 1] ?? day)).length
  const downs = days.filter((day, at) => at > 0 && day < (days[at - 1] ?? day)).length
  const sign = downs > ups ? -1 : 1
  const kept = new Set(longestRun(days.map((day) => sign * day)))
  loosenEnds(days, kept)
  const out = days.map((_, at) => at).filter((at) => !kept.has(at))
  if (out.length === 0 || out.length > Math.max(2, days.length / 10)) return []
  const inOrder = [...kept].sort((a, b) => a - b)
  const gap = medianGap(inOrder.map((at) => days[at] ?? 0))
  return out.map((at) => {
    const before = inOrder.findLast((one) => one < at)
    const after = inOrder.find((one) => one > at)
    const ends = [before, after].map((one) => (one === undefined ? undefined : days[one]))
    const [first, last] = sign === 1 ? ends : [ends[1], ends[0]]
    const from = first ?? (last ?? 0) - 4 * gap
    const to = last ?? (first ?? 0) + 4 * gap
    const likely = likelyDate(dates[at] ?? '', from, to)
    const why = `out of order: its neighbours are ${neighbours(dates, before, after)}`
    return { at, why, ...(likely !== undefined && { likely }) }
  })
}

const neighbours = (
  dates: readonly string[],
  before: number | undefined,
  after: number | undefined,
): string => [before, after].flatMap((at) => (at === undefined ? [] : (dates[at] ?? []))).join(' and ')

/** Places of a longest run that never falls (patience sorting). */
function longestRun(values: readonly number[]): readonly number[] {
  const tails: number[] = []
  const previous: number[] = []
  for (const [at, value] of values.entries()) {
    let [low, high] = [0, tails.length]
    while (low < high) {
      const middle = (low + high) >> 1
      if ((values[tails[middle] ?? 0] ?? 0) <= value) low = middle + 1
      else high = middle
    }
    previous.push(low > 0 ? (tails[low - 1] ?? -1) : -1)
    tails[low] = at
  }
  const run: number[] = []
  for (let at = tails.at(-1) ?? -1; at >= 0; at = previous[at] ?? -1) run.push(at)
  return run.reverse()
}

/** A last row decades ahead is in order and a slip all the same. */
function loosenEnds(days: readonly number[], kept: Set<number>): void {
  const inOrder = [...kept].sort((a, b) => a - b)
  if (inOrder.length < fewest) return
  const far = (a: number | undefined, b: number | undefined): boolean =>
    a !== undefined && b !== undefined && Math.abs((days[a] ?? 0) - (days[b] ?? 0)) > farDays
  const [first, second] = inOrder
  if (first !== undefined && far(first, second)) kept.delete(first)
  const [beforeLast, last] = inOrder.slice(-2)
  if (last !== undefined && far(last, beforeLast)) kept.delete(last)
}

function medianGap(days: readonly number[]): number {
  const gaps = days.slice(1).map((day, at) => Math.abs(day - (days[at] ?? day)))
  return Math.max(1, gaps.sort((a, b) => a - b)[Math.floor(gaps.length / 2)] ?? 1)
}

/** The date with another year, another month, or day and month turned, that stands between its neighbours. */
function likelyDate(date: string, from: number, to: number): string | undefined {
  const [, month = 0, day = 0] = date.split('-').map(Number)
  const ends = [from, to].map((at) => new Date(at * 86_400_000))
  const years = ends.map((end) => end.getUTCFullYear())
  const months = ends.map((end) => end.getUTCMonth() + 1)
  const tries = [
    ...years.map((other) => [other, month, day] as const),
    ...years.flatMap((other) => months.map((turn) => [other, turn, day] as const)),
    ...years.map((other) => [other, day, month] as const),
  ]
  for (const [y, m, d] of tries) {
    const found = civil(y, m, d)?.toString()
    if (found !== undefined && found !== date && dayOf(found) >= from && dayOf(found) <= to) return found
  }
  return undefined
}
