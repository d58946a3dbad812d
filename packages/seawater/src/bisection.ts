import { OutOfRange } from './out-of-range.ts'

/** What is looked for, for the words of the error. */
export interface Sought {
  readonly where: string
  readonly low: number
  readonly high: number
  readonly next: string
}

/**
 * Where a rising function comes to a target. It is halved until two neighbouring numbers are left, so the
 * answer is as exact as the function and there is no tolerance to choose.
 *
 * @param rising   grows all the way from `low` to `high`
 * @param target   in the unit of the function
 * @throws OutOfRange where the target lies outside what the function takes on between `low` and `high`
 */
export function whereRises(rising: (at: number) => number, target: number, sought: Sought): number {
  let { low, high } = sought
  const [lowest, highest] = [rising(low), rising(high)]
  if (!(target >= lowest && target <= highest)) {
    throw new OutOfRange({
      code: 'out-of-range',
      where: sought.where,
      got: target,
      accepted: `${lowest} to ${highest}`,
      next: sought.next,
    })
  }
  for (;;) {
    const middle = low + (high - low) / 2
    if (middle <= low || middle >= high) return high
    if (rising(middle) < target) low = middle
    else high = middle
  }
}
