import { civil } from './civil.ts'
import type { DateText } from './parse-date.ts'

export type DateOrder = 'day first' | 'month first'

const both: readonly DateOrder[] = ['day first', 'month first']

/** A date written with two numbers, in an order. */
export function inOrder({ either, ...rest }: DateText, order: DateOrder): DateText {
  if (either === undefined) return rest
  const [day, month] = order === 'day first' ? either : [either[1], either[0]]
  return { ...rest, day, month }
}

/**
 * The order of day and month, judged over all dates of a table: by a number above 12, by the day of the week,
 * or by rows that run on evenly in one order only. 'none' where nothing hangs on it, undefined where it
 * must be asked.
 *
 * @param yearAround  the year that a title says, for dates without one
 */
export function dateOrder(dates: readonly DateText[], yearAround?: number): DateOrder | 'none' | undefined {
  const open = dates.filter(({ either }) => either !== undefined)
  if (open.length === 0) return 'none'
  const misses = both.map((order) => open.filter((date) => !fits(inOrder(date, order), yearAround)).length)
  const [dayFirst = 0, monthFirst = 0] = misses
  if (dayFirst !== monthFirst) {
    // where both orders have misses the column is mixed, unless the other order has many more
    if (Math.min(dayFirst, monthFirst) * 4 < Math.max(dayFirst, monthFirst))
      return dayFirst < monthFirst ? 'day first' : 'month first'
    return undefined
  }
  if (open.every(({ either }) => either?.[0] === either?.[1])) return 'none'
  return byRun(open)
}

/** A day of the week tells only where the year is known; a sheet that names its first may run into the next. */
function fits({ year, month = 0, day = 0, weekday }: DateText, yearAround: number | undefined): boolean {
  if (year === undefined && (weekday === undefined || yearAround === undefined))
    return civil(2024, month, day) !== undefined
  const years = year === undefined && yearAround !== undefined ? [yearAround, yearAround + 1] : [year ?? 0]
  const days = years.flatMap((one) => civil(one, month, day) ?? [])
  return days.some(({ dayOfWeek }) => weekday === undefined || dayOfWeek === weekday)
}

/** Rows are written one after the other: an order in which they jump about is not the writer's. */
function byRun(open: readonly DateText[]): DateOrder | undefined {
  if (open.length < 4) return undefined
  const [dayFirst = 0, monthFirst = 0] = both.map((order) => {
    const days = open.map((date) => dayNumber(inOrder(date, order)))
    const steps = days.slice(1).map((day, at) => day - (days[at] ?? day))
    const [up, down] = [steps.filter((step) => step < 0).length, steps.filter((step) => step > 0).length]
    return Math.min(up, down)
  })
  if (dayFirst === 0 && monthFirst >= 2) return 'day first'
  if (monthFirst === 0 && dayFirst >= 2) return 'month first'
  return undefined
}

const dayNumber = ({ year = 2024, month = 1, day = 1 }: DateText): number =>
  Date.UTC(year, month - 1, day) / 86_400_000
