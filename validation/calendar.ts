/** Civil dates of a case (all UTC) and the days of the model, which count from 1970-01-01T00:00Z. */

const msPerDay = 86_400_000

/** Whole days from 1970-01-01 to an ISO date. */
export function dayNumber(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / msPerDay
}

export function isoDate(day: number): string {
  return new Date(Math.floor(day) * msPerDay).toISOString().slice(0, 10)
}

/** A case has dates and no hours: readings are taken at noon. */
export function noon(date: string): number {
  return dayNumber(date) + 0.5
}

/** What is done on a day is done an hour after its readings. */
export function anHourLater(day: number): number {
  return day + 1 / 24
}

export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from)
}
