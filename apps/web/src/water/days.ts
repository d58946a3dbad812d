import type { Day } from '@holdfast/ecosystem'
import { dateFormat } from '../ways/dates.ts'
import type { Span } from '../worker/answers.ts'

const instant = (day: Day) => new Date(day * 86_400_000)

/** "12 Dec 2025" in the zone of the system and the order of the keeper. */
export const dayText = (day: Day, timeZone: string) =>
  dateFormat({ timeZone, day: 'numeric', month: 'short', year: 'numeric' }).format(instant(day))

/** "12 Dec", for axes; "Dec 2025" where more than a year is shown, so that no two marks read alike. */
export const shortDayText = (day: Day, timeZone: string, { from, to }: Span) =>
  dateFormat(
    to - from > 366
      ? { timeZone, month: 'short', year: 'numeric' }
      : { timeZone, day: 'numeric', month: 'short' },
  ).format(instant(day))
