import type { JournalLine } from '@holdfast/logbook'

/** What became of an entry, in words that follow it; empty where it simply holds. */
export function fateInWords(line: JournalLine, lines: readonly JournalLine[]): string {
  const { state, by, rivals } = line
  const said = (id: string | undefined): string | undefined => {
    const found = lines.find(({ entry }) => entry.id === id)
    return found && `“${found.says}”`
  }
  const parts = [
    ...(state === 'taken back' ? ['Taken back.'] : []),
    ...(state === 'corrected'
      ? [`Corrected${by === undefined ? '' : ` to ${said(by) ?? 'a later entry'}`}.`]
      : []),
    ...(rivals.length > 0
      ? [
          rivalsInWords(
            line,
            rivals.map((id) => said(id) ?? 'an entry further down'),
          ),
        ]
      : []),
  ]
  return parts.join(' ')
}

function rivalsInWords({ state }: JournalLine, others: readonly string[]): string {
  const what = `The same was corrected ${others.length + 1} times side by side, also to ${others.join(' and ')}.`
  return state === 'holds'
    ? `${what} This one came in last and holds; correct it if it should not.`
    : `${what} The one that came in last holds.`
}
