import type { Day } from '@holdfast/ecosystem'

const instant = (day: Day) => new Date(day * 86_400_000)

/** "12 Dec 2025" in the zone of the system. */
export const dayText = (day: Day, timeZone: string) =>
  new Intl.DateTimeFormat('en-GB', { timeZone, day: 'numeric', month: 'short', year: 'numeric' }).format(
    instant(day),
  )

/** "12 Dec", for axes. */
export const shortDayText = (day: Day, timeZone: string) =>
  new Intl.DateTimeFormat('en-GB', { timeZone, day: 'numeric', month: 'short' }).format(instant(day))
