import canonicalize from 'canonicalize'
import type { Stored } from '../entries/entry.ts'
import { kinds } from '../entries/index.ts'
import { type JournalLine, journal } from '../entries/journal.ts'
import { readEntry } from '../entries/read-entry.ts'
import { readQuantities } from '../entries/reading.ts'
import type { Kept } from '../logbook.ts'
import type { Gathered } from './gather.ts'

/** The heading over the cells that hold the whole; an import knows an export by it. */
export const wholeHeading = 'Holdfast entry (JSON)'

/**
 * The columns of a table for people. An import reads the first, which tells the order, and the last,
 * which holds everything; the others are a view of it.
 */
export const headings = [
  'No.',
  'Received (UTC)',
  'System',
  'Day',
  'Time',
  'Kind',
  'What it says',
  'Quantity',
  'Value',
  'Unit',
  'State',
  wholeHeading,
] as const

/** Cells for people, then the whole as JSON in ASCII. */
export interface Row {
  readonly cells: readonly (string | number)[]
  readonly whole: string
}

/** What the export is; the first row. */
export function headRow({ head, entries, attachments }: Gathered): Row {
  const says = `All of a log: ${entries.length} entries, ${attachments.length} attachments. Only the last column counts for an import.`
  const counts = { entries: entries.length, attachments: attachments.length }
  return { cells: [0, head.madeAt, '', '', '', 'Export', says], whole: wholeOf({ ...head, ...counts }) }
}

/** A row an entry, in the order of receipt. */
export function* entryRows(entries: readonly Kept[]): Generator<Row> {
  const lines = linesOf(entries)
  for (const [place, entry] of entries.entries()) {
    const line = lines.get(entry.id)
    const [day, time = ''] = entry.at.split('T')
    const says = line?.says ?? 'takes back what was said before'
    const figures = line === undefined ? ['', '', ''] : figuresOf(line.entry)
    const kind = kinds.find(({ name }) => name === entry.kind)?.title ?? entry.kind
    const state = line?.state ?? 'holds'
    const cells = [
      place + 1,
      entry.knownAt,
      entry.system,
      day,
      time.slice(0, 5),
      kind,
      says,
      ...figures,
      state,
    ]
    yield { cells: cells.map(shown), whole: wholeOf(entry) }
  }
}

/** Bytes of an attachment in one row; their Base64 fits in a cell of every spreadsheet program. */
const pieceSize = 9000

/** The attachments, each in as many rows as it needs. */
export async function* attachmentRows({ attachments, bytesOf }: Gathered): AsyncGenerator<Row> {
  let number = 0
  for (const attachment of attachments) {
    const bytes = Buffer.from(await bytesOf(attachment))
    const pieces = Math.max(1, Math.ceil(bytes.length / pieceSize))
    for (let piece = 0; piece < pieces; piece++) {
      const base64 = bytes.subarray(piece * pieceSize, (piece + 1) * pieceSize).toString('base64')
      const says = `${attachment.type}, ${attachment.size} bytes, piece ${piece + 1} of ${pieces}`
      number++
      yield {
        cells: [number, '', '', '', '', 'Attachment', says],
        whole: wholeOf({ attachment: { ...attachment, piece, pieces, base64 } }),
      }
    }
  }
}

function linesOf(entries: readonly Kept[]): ReadonlyMap<string, JournalLine> {
  const systems = new Map<string, Stored[]>()
  for (const { knownAt, ...sent } of entries) {
    const read = readEntry(sent)
    if (!read.ok) continue
    const of = systems.get(sent.system)
    if (of === undefined) systems.set(sent.system, [{ ...read.entry, knownAt }])
    else of.push({ ...read.entry, knownAt })
  }
  return new Map(
    [...systems.values()].flatMap((stored) => journal(stored).map((line) => [line.entry.id, line])),
  )
}

/** A reading in the model's unit, to draw and to reckon with; of a bound, the sign stays with it. */
function figuresOf(entry: Stored): (string | number)[] {
  if (entry.kind !== 'reading') return ['', '', '']
  const { quantity, value, belowDetection, aboveRange } = entry.body
  const bound = belowDetection ? '<' : aboveRange ? '>' : ''
  const shown = value === null ? 'not detected' : bound === '' ? value : `${bound}${value}`
  return [quantity, shown, readQuantities[quantity]]
}

/** The whole is in the last column: a cell for people need not hold a page, nor what no program can show. */
function shown(cell: string | number): string | number {
  if (typeof cell === 'number') return cell
  const text = cell.replace(/[^\t\n\r\P{Cc}]|[\ufffe\uffff]|\p{Surrogate}/gu, '\ufffd')
  return text.length > 2000 ? `${text.slice(0, 1999)}…` : text
}

/**
 * Canonical JSON (RFC 8785) with all but ASCII escaped, and "_x", which a workbook may take for an escape
 * of its own: so no program that saves the table anew, in whatever encoding, can change it.
 */
function wholeOf(value: unknown): string {
  const code = (unit: string): string => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`
  return (canonicalize(value) ?? '').replace(/[^ -~]/g, code).replaceAll('_x', '\\u005fx')
}
