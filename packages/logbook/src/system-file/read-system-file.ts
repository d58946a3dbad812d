import type { System } from '@holdfast/ecosystem'

import { z } from '../entries/schema.ts'
import type { Issue } from '../issue.ts'
import { systemDocument } from './document.ts'
import { documentIssues } from './document-issues.ts'
import { jsonFault } from './json-fault.ts'
import { misfits } from './references.ts'
import { toSystem } from './to-system.ts'

/** The system a file describes, with the document as typed; or all that is wrong with it. */
export type SystemFileRead =
  | { readonly ok: true; readonly system: System; readonly document: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly issues: readonly Issue[] }

/**
 * Reads a system file: a JSON document as `systemDocument` has it, every value with its unit. All issues
 * are reported at once; nothing is guessed, and keys that are not known are issues.
 *
 * @example readSystemFile('{"name": "Nano", "timeZone": "Europe/Berlin", "vessels": []}')
 */
export function readSystemFile(text: string): SystemFileRead {
  const source = text.replace(/^\uFEFF/, '')
  const outer = outerIssue(source)
  if (outer !== undefined) return { ok: false, issues: [outer] }
  const document: unknown = JSON.parse(source)
  const parsed = systemDocument.safeParse(document)
  const issues = [
    ...(parsed.success ? [] : parsed.error.issues.flatMap((issue) => documentIssues(issue, document))),
    ...misfits(document),
  ]
  if (!parsed.success || issues.length > 0) return { ok: false, issues }
  return {
    ok: true,
    system: toSystem(parsed.data),
    document: z.record(z.string(), z.unknown()).parse(document),
  }
}

const aDocument = 'A JSON document that begins with { and ends with }.'

/** What keeps a text from being a document at all. */
function outerIssue(source: string): Issue | undefined {
  const where = 'System file'
  const copy = 'Start from one of the examples.'
  if (source.trim() === '')
    return { code: 'empty-file', where, got: 'it is empty', accepted: aDocument, next: copy }
  // A picture or an archive read as text shows control characters or the mark of bytes that are no text.
  if ([...source].some((one) => (one < ' ' && !'\t\r\n'.includes(one)) || one === '\uFFFD')) {
    return {
      code: 'not-text',
      where,
      got: 'it is no text',
      accepted: aDocument,
      next: 'Choose the system file itself.',
    }
  }
  const fault = jsonFault(source)
  if (fault === undefined) return undefined
  const place = `line ${fault.line}, column ${fault.column}`
  const next = 'Look there for a comma, a quote or a bracket that is missing or too much.'
  return {
    code: 'not-json',
    where: `${where}, ${place}`,
    got: `${fault.found} does not belong there`,
    accepted: aDocument,
    next,
  }
}
