import { type Moment, type MomentRead, momentAt, readMoment } from '@holdfast/logbook'

/** When it was so: now, or a civil date with or without a time, in the zone of the system. */
export type When = 'now' | DayAndTime

interface DayAndTime {
  readonly date: string
  /** Empty: the day alone is known. */
  readonly time: string
  /** Of an hour that the clocks show twice. */
  readonly offset?: string
}

/**
 * The moment of an entry, or what is wrong with it, or which of two hours must be asked.
 *
 * @param timeZone  IANA zone of the system
 */
export function momentOf(when: When, timeZone: string, now: Date): MomentRead {
  if (when === 'now') return { ok: true, ...momentAt(now, timeZone) }
  const { date, time, offset = '' } = when
  return readMoment(time === '' ? date : `${date}T${time}${offset}`, timeZone)
}

/** The date and time that stand in an entry. */
export const whenOf = ({ at, precision }: Moment): DayAndTime => ({
  date: at.slice(0, 10),
  time: precision === 'minute' ? at.slice(11, 16) : '',
})

/** Whether nothing was changed. */
export const isSame = (a: When, b: When): boolean =>
  a === b || (a !== 'now' && b !== 'now' && a.date === b.date && a.time === b.time && a.offset === b.offset)

/** Which of the two hours an answer says, such as 2026-10-25T02:30+01:00. */
export const withOffset = (when: DayAndTime, answer: string): DayAndTime => ({
  ...when,
  offset: answer.slice(-6),
})

/** Today in the zone of the system, as a date. */
export const today = (timeZone: string, now: Date): string => momentAt(now, timeZone).at.slice(0, 10)
