/** What was wrong with an argument, as data; the words are made from it. */
export interface RangeIssue {
  readonly code: 'out-of-range'
  /** The argument, such as 'salinity'. */
  readonly where: string
  readonly got: number
  /** Such as '0 to 40'. */
  readonly accepted: string
  readonly next: string
}

/** Thrown where a formula does not hold for what it was given; nothing is clipped. */
export class OutOfRange extends Error {
  readonly issue: RangeIssue

  constructor(issue: RangeIssue) {
    super(`${issue.where}: ${issue.got} is outside ${issue.accepted}. ${issue.next}`)
    this.name = 'OutOfRange'
    this.issue = issue
  }
}

/** A closed range of numbers and the words for it. */
export interface Range {
  readonly low: number
  readonly high: number
  /** What to do when a value lies outside. */
  readonly next: string
  /** True: `low` itself is not accepted. */
  readonly aboveLow?: boolean
  /** True: `high` itself is not accepted. */
  readonly belowHigh?: boolean
}

/** @throws OutOfRange unless `value` is a number in `range` */
export function demand(where: string, value: number, range: Range): void {
  const { low, high, next, aboveLow = false, belowHigh = false } = range
  const lowHolds = aboveLow ? value > low : value >= low
  const highHolds = belowHigh ? value < high : value <= high
  if (lowHolds && highHolds && Number.isFinite(value)) return
  const from = aboveLow ? `above ${low}` : `${low}`
  const to = high === Infinity ? 'any finite number' : belowHigh ? `below ${high}` : `${high}`
  throw new OutOfRange({ code: 'out-of-range', where, got: value, accepted: `${from} to ${to}`, next })
}
