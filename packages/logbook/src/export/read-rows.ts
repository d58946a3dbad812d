import { z } from '../entries/schema.ts'
import { schemaIssues } from '../entries/schema-issues.ts'
import type { Issue } from '../issue.ts'
import type { Kept } from '../logbook.ts'
import { exportedAttachment, exportHead, keptEntry } from './document.ts'
import { changed, cutOff, first, newer } from './faults.ts'
import type { ExportedFile, ExportRead } from './read-export.ts'
import { faultOf } from './read-json.ts'
import type { WrittenRow } from './rows-of.ts'

const countedHead = z.object({ ...exportHead.shape, entries: z.int(), attachments: z.int() })

const pieceRow = z.object({
  attachment: z.object({ ...exportedAttachment.shape, piece: z.int(), pieces: z.int() }),
})

type Piece = z.infer<typeof pieceRow>['attachment']

/** Reads an export in a table form; its rows may stand in any order, since each has its number. */
export function readRows(rows: readonly WrittenRow[]): ExportRead {
  const issues: Issue[] = []
  let head: z.infer<typeof countedHead> | undefined
  const entries: { readonly number: number; readonly entry: Kept }[] = []
  const pieces: Piece[] = []
  for (const { where, number, whole } of rows) {
    const value = parsed(whole)
    if (has(value, 'format')) {
      const tooNew = newer(value)
      if (tooNew !== undefined) return { ok: false, issues: [tooNew] }
      head = take(countedHead, value, where, issues)
    } else if (has(value, 'attachment')) {
      const row = take(pieceRow, value, where, issues)
      if (row !== undefined) pieces.push(row.attachment)
    } else if (value === undefined) issues.push(changed(where, 'its last column is cut off or changed'))
    else {
      const entry = take(keptEntry, value, where, issues)
      if (!/^\d+$/.test(number)) issues.push(changed(where, `"${number}" is no number of a row`))
      // The schema has checked what every entry carries; its body is for the store to read.
      else if (entry !== undefined) entries.push({ number: Number(number), entry: entry as Kept })
    }
  }
  const attachments = joined(pieces)
  issues.push(...attachments.flatMap((file) => faultOf(file) ?? []))
  if (head === undefined) issues.push(cutOff('the row that says what it is, number 0, is missing'))
  else if (issues.length === 0) {
    const { entries: said, attachments: files } = head
    if (entries.length !== said) issues.push(cutOff(`it holds ${entries.length} of ${said} entries`))
    if (attachments.length !== files)
      issues.push(cutOff(`it holds ${attachments.length} of ${files} attachments`))
  }
  if (head === undefined || issues.length > 0) return { ok: false, issues: first(issues) }
  const { entries: _, attachments: __, ...said } = head
  const inOrder = entries.toSorted((a, b) => a.number - b.number).map(({ entry }) => entry)
  return { ok: true, contents: { head: said, entries: inOrder, attachments } }
}

/** The value where it fits its schema; else its issues are added to the others. */
function take<Schema extends z.ZodMiniType>(
  schema: Schema,
  value: unknown,
  where: string,
  issues: Issue[],
): z.output<Schema> | undefined {
  const read = schema.safeParse(value)
  if (read.success) return read.data
  issues.push(...schemaIssues(read.error, where, value))
  return undefined
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
