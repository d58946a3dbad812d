import {
  composeEntry,
  draftEntry,
  type Entry,
  type EntryKind,
  type Issue,
  issueInWords,
  type JournalLine,
  type Typed,
} from '@holdfast/logbook'
import type { Hono } from 'hono'
import { asked } from './against-document.ts'

export const json = { 'content-type': 'application/json' }

/** An entry of the example as a keeper types it. */
export function typed(
  kind: EntryKind,
  texts: Typed,
  about: Partial<Pick<Entry, 'at' | 'replaces' | 'system' | 'workspace'>> = {},
): Entry {
  const draft = draftEntry(kind, texts)
  if (!draft.ok) throw new Error(JSON.stringify(draft))
  const { workspace = 'home', system = 'example-reef', at = '2026-02-20', ...more } = about
  const who = { by: 'keeper', device: 'test' }
  const parts = { workspace, system, kind, body: draft.body, at, precision: 'day', ...who, ...more } as const
  return composeEntry(parts, new Date('2026-02-20T12:00:00Z'))
}

export const nitrate = (value: string, about: Parameters<typeof typed>[2] = {}): Entry =>
  typed('reading', { quantity: 'nitrate', value }, about)

/** Sends a document as entries. */
export const send = (
  server: Hono,
  entries: unknown,
  headers: Record<string, string> = json,
): Promise<Response> =>
  asked(server, 'post /api/entries', '/api/entries', { headers, body: JSON.stringify(entries) })

/** Asks for the journal of the example. */
export const list = (server: Hono, question = ''): Promise<Response> =>
  asked(server, 'get /api/systems/{system}/entries', `/api/systems/example-reef/entries${question}`)

export interface Listed {
  readonly lines: readonly JournalLine[]
  readonly next?: string
}

export const lines = async (server: Hono, question = ''): Promise<Listed> =>
  (await list(server, question)).json()

/** The issues of a refusal, in words. */
export async function said(answer: Response): Promise<readonly string[]> {
  const { issues }: { readonly issues: readonly Issue[] } = await answer.json()
  return issues.map(issueInWords)
}
