import type { Day } from '@holdfast/ecosystem'
import { dateFormat } from '../ways/dates.ts'

const instant = (day: Day) => new Date(day * 86_400_000)

/** "12 Dec 2025" in the zone of the system and the order of the keeper. */
export const dayText = (day: Day, timeZone: string) =>
  dateFormat({ timeZone, day: 'numeric', month: 'short', year: 'numeric' }).format(instant(day))

/** "12 Dec", for axes. */
export const shortDayText = (day: Day, timeZone: string) =>
  dateFormat({ timeZone, day: 'numeric', month: 'short' }).format(instant(day))
