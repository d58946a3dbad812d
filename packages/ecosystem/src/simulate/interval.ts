import type { Day, Event } from '../log.ts'

/** From a day on something is done at intervals; without an interval it is not done. */
export interface Interval {
  readonly start: Day
  readonly every: number | undefined
}

/** Changes of a key of equipment that the log tells, in order of days. */
export const changesOf = (
  equipment: string,
  key: string,
  events: readonly Event[],
): readonly { readonly day: Day; readonly value: number }[] =>
  events
    .flatMap((event) => {
      if (event.kind !== 'equipment change' || event.equipment !== equipment) return []
      const value = event.changes[key]
      return typeof value === 'number' ? [{ day: event.day, value }] : []
    })
    .sort((a, b) => a.day - b.day)

/** How often something is done, as described and as the log changes it. */
export const intervals = (
  equipment: string,
  key: string,
  described: number | undefined,
  events: readonly Event[],
  from: Day,
): readonly Interval[] => [
  { start: from, every: described },
  ...changesOf(equipment, key, events).map(({ day, value }) => ({ start: day, every: value })),
]

/** One interval after each beginning, and on until the next beginning. */
export function daysOf(spans: readonly Interval[], to: Day): readonly Day[] {
  return spans.flatMap(({ start, every }, k) => {
    const days: Day[] = []
    const end = spans[k + 1]?.start ?? to
    if (every !== undefined && every > 0)
      for (let day = start + every; day < end; day += every) days.push(day)
    return days
  })
}
