import { z } from '../entries/schema.ts'
import { schemaIssues } from '../entries/schema-issues.ts'
import type { Issue } from '../issue.ts'
import type { Kept } from '../logbook.ts'
import { exportedAttachment, exportHead, keptEntry } from './document.ts'
import { changed, cutOff, first, newer } from './faults.ts'
import type { ExportedFile, ExportRead } from './read-export.ts'
import { faultOf } from './read-json.ts'
import type { Rows } from './rows-of.ts'

const countedHead = z.object({ ...exportHead.shape, entries: z.int(), attachments: z.int() })

const pieceRow = z.object({
  attachment: z.object({ ...exportedAttachment.shape, piece: z.int(), pieces: z.int() }),
})

type Piece = z.infer<typeof pieceRow>['attachment']

/** Reads an export in a table form; its rows may stand in any order, since each has its number. */
export function readRows(rows: Rows): ExportRead {
  const issues: Issue[] = []
  const heads: z.infer<typeof countedHead>[] = []
  const entries: { readonly number: number; readonly entry: Kept }[] = []
  const pieces: Piece[] = []
  let tooNew: Issue | undefined
  rows(({ where, number, whole }) => {
    const value = parsed(whole)
    if (value === undefined) issues.push(changed(where, 'its last column is cut off or changed'))
    else if (has(value, 'format')) {
      tooNew ??= newer(value)
      heads.push(...take(countedHead, value, where, issues))
    } else if (has(value, 'attachment')) {
      pieces.push(...take(pieceRow, value, where, issues).map(({ attachment }) => attachment))
    } else {
      if (!/^\d+$/.test(number)) issues.push(changed(where, `"${number}" is no number of a row`))
      // The schema has checked what every entry carries; its body is for the store to read.
      for (const entry of take(keptEntry, value, where, issues))
        entries.push({ number: Number(number), entry: entry as Kept })
    }
  })
  if (tooNew !== undefined) return { ok: false, issues: [tooNew] }
  const attachments = joined(pieces)
  issues.push(...attachments.flatMap((file) => faultOf(file) ?? []))
  const [counted] = heads
  if (counted === undefined) issues.push(cutOff('the row that says what it is, number 0, is missing'))
  else if (issues.length === 0) issues.push(...missing(counted, entries.length, attachments.length))
  if (counted === undefined || issues.length > 0) return { ok: false, issues: first(issues) }
  const { entries: _, attachments: __, ...head } = counted
  const inOrder = entries.sort((a, b) => a.number - b.number).map(({ entry }) => entry)
  return { ok: true, contents: { head, entries: inOrder, attachments } }
}

/** A row that is not there cannot have a fault of its own: the counts of the first row tell. */
function missing(said: z.infer<typeof countedHead>, entries: number, attachments: number): Issue[] {
  const of = (what: string, found: number, all: number): Issue[] =>
    found === all ? [] : [cutOff(`it holds ${found} of ${all} ${what}`)]
  return [...of('entries', entries, said.entries), ...of('attachments', attachments, said.attachments)]
}

/** The value where it fits its schema; else none, and its issues are added to the others. */
function take<Schema extends z.ZodMiniType>(
  schema: Schema,
  value: unknown,
  where: string,
  issues: Issue[],
): z.output<Schema>[] {
  const read = schema.safeParse(value)
  if (read.success) return [read.data]
  issues.push(...schemaIssues(read.error, where, value))
  return []
}

/** Attachments put together from their pieces; one with a piece missing is not what its name says. */
function joined(pieces: readonly Piece[]): ExportedFile[] {
  const files = new Map<string, Piece[]>()
  for (const piece of pieces) {
    const file = files.get(piece.sha256)
    if (file === undefined) files.set(piece.sha256, [piece])
    else file.push(piece)
  }
  return [...files].map(([sha256, parts]) => {
    const inOrder = parts.toSorted((a, b) => a.piece - b.piece)
    const bytes = Buffer.concat(inOrder.map(({ base64 }) => Buffer.from(base64, 'base64')))
    return { sha256, type: parts[0].type, bytes }
  })
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

const has = (value: unknown, key: string): boolean =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
