import { Temporal } from 'temporal-polyfill'

/** A day of the calendar, or undefined where the calendar has none such. */
export function civil(year: number, month: number, day: number): Temporal.PlainDate | undefined {
  try {
    return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' })
  } catch {
    return undefined
  }
}

/** Days since 1970 of an ISO date. */
export const dayOf = (date: string): number => Date.parse(`${date}T00:00:00Z`) / 86_400_000
