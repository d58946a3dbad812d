import { schemaIssues } from '../entries/schema-issues.ts'
import type { Kept } from '../logbook.ts'
import { sha256 as sumOf } from '../storage/sha256.ts'
import { exportDocument } from './document.ts'
import { changed, cutOff, first, newer } from './faults.ts'
import type { ExportedFile, ExportRead } from './read-export.ts'

/** Reads an export in its JSON form. */
export function readJson(bytes: Uint8Array): ExportRead {
  let value: unknown
  try {
    value = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch (error) {
    const why = error instanceof Error ? error.message : 'it is no JSON'
    return { ok: false, issues: [cutOff(`it cannot be read to its end (${why})`)] }
  }
  const tooNew = newer(value)
  if (tooNew !== undefined) return { ok: false, issues: [tooNew] }
  const read = exportDocument.safeParse(value)
  if (!read.success) return { ok: false, issues: first(schemaIssues(read.error, 'Export', value)) }
  const { entries, attachments, ...head } = read.data
  const files: ExportedFile[] = attachments.map(({ sha256, type, base64 }) => ({
    sha256,
    type,
    bytes: Buffer.from(base64, 'base64'),
  }))
  const issues = files.flatMap((file) => faultOf(file) ?? [])
  if (issues.length > 0) return { ok: false, issues: first(issues) }
  // The schema has checked what every entry carries; its body is for the store to read.
  return { ok: true, contents: { head, entries: entries as readonly Kept[], attachments: files } }
}

/** Why an attachment is not what its name says. */
export function faultOf({ sha256, bytes }: ExportedFile): ReturnType<typeof changed> | undefined {
  if (sumOf(bytes) === sha256) return undefined
  return changed(`Attachment ${sha256}`, 'its bytes are not those that were attached')
}
