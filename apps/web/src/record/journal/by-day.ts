import type { JournalLine } from '@holdfast/logbook'

/** Lines of one day that belong together: those of one import, or those written one by one. */
export interface Group {
  readonly batch: string | undefined
  readonly lines: readonly JournalLine[]
}

export interface DayOfLines {
  /** ISO date. */
  readonly date: string
  readonly groups: readonly Group[]
}

/** The lines by their days, in their order; within a day those of an import come together, after the others. */
export function byDay(lines: readonly JournalLine[]): readonly DayOfLines[] {
  const days = grouped(lines, ({ entry }) => entry.at.slice(0, 10))
  return [...days].map(([date, ofDay]) => {
    const groups = [...grouped(ofDay, ({ entry }) => entry.batch)].map(([batch, lines]) => ({ batch, lines }))
    const byHandFirst = (a: Group, b: Group) => Number(a.batch !== undefined) - Number(b.batch !== undefined)
    return { date, groups: groups.toSorted(byHandFirst) }
  })
}

function grouped<Key>(lines: readonly JournalLine[], by: (line: JournalLine) => Key) {
  const groups = new Map<Key, JournalLine[]>()
  for (const line of lines) groups.set(by(line), [...(groups.get(by(line)) ?? []), line])
  return groups
}
