import type { BodyOf, JournalLine } from '@holdfast/logbook'
import { amount } from '../../ways/amounts.ts'
import { dayInShort } from '../../ways/dates.ts'
import type { Letter } from './paragraph.ts'

/** What the log says about a sentence of the letter, by the sentence's key. */
export type Taught = ReadonlyMap<string, string>

/** Sets beside what was said what was written down since. */
export function taughtBy(letter: Letter, lines: readonly JournalLine[]): Taught {
  const holding = lines.filter(({ state }) => state === 'holds')
  const notes: (readonly [string, string | undefined])[] = [
    ['kept at', lastReadings(holding)],
    ['water change', changes(holding)],
    ...(letter.feeds ?? []).map(({ kind }, i) => [`feed ${i}`, fed(holding, kind)] as const),
    ...(letter.algae ?? []).map((one, i) => [`algae ${i}`, surveyed(holding, one)] as const),
  ]
  return new Map(notes.flatMap(([key, note]) => (note === undefined ? [] : [[key, note] as const])))
}

function lastReadings(lines: readonly JournalLine[]): string | undefined {
  const last = (['temperature', 'salinity'] as const).flatMap(
    (quantity) =>
      lines.find(
        ({ entry }) => entry.kind === 'reading' && (entry.body as BodyOf<'reading'>).quantity === quantity,
      ) ?? [],
  )
  if (last.length === 0) return undefined
  return `Last read: ${last.map(({ says, entry }) => `${says} on ${dayInShort(entry.at.slice(0, 10))}`).join(', ')}.`
}

function changes(lines: readonly JournalLine[]): string | undefined {
  const changed = lines.filter(({ entry }) => entry.kind === 'water-change')
  const days = changed.map(({ entry }) => Date.parse(entry.at.slice(0, 10)) / 86_400_000)
  const [newest, oldest] = [Math.max(...days), Math.min(...days)]
  if (changed.length < 3 || newest === oldest) return undefined
  const volumes = changed.map(({ entry }) => (entry.body as BodyOf<'water-change'>).volume_L)
  const mean = volumes.reduce((sum, volume) => sum + volume, 0) / volumes.length
  const every = Math.round((newest - oldest) / (changed.length - 1))
  return `The log’s last ${changed.length}: ${amount('volume', mean)} every ${every} days on average.`
}

function fed(lines: readonly JournalLine[], kind: string): string | undefined {
  const last = lines.find(
    ({ entry }) =>
      entry.kind === 'feeding' && [undefined, kind].includes((entry.body as BodyOf<'feeding'>).feed),
  )
  return last && `Changed in the log on ${dayInShort(last.entry.at.slice(0, 10))}: ${last.says}.`
}

function surveyed(
  lines: readonly JournalLine[],
  { kind, surface }: { readonly kind: string; readonly surface: string },
): string | undefined {
  const last = lines.find(({ entry }) => {
    if (entry.kind !== 'survey') return false
    const body = entry.body as BodyOf<'survey'>
    return body.algae === kind && body.surface === surface
  })
  return last && `Surveyed on ${dayInShort(last.entry.at.slice(0, 10))}: ${last.says}.`
}
