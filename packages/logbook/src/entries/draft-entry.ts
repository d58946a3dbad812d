import type { About, Blank, Typed } from './blank.ts'
import type { BodyOf, Entry, EntryKind } from './entry.ts'
import { fillIn, type NotUnderstood } from './fill-in.ts'
import { kindNamed } from './index.ts'

/** The body that texts make, or all that is wrong with them and all that must be asked. */
export type Draft<Kind extends EntryKind = EntryKind> =
  | { readonly ok: true; readonly body: BodyOf<Kind> }
  | ({ readonly ok: false } & NotUnderstood)

/** The kinds that a person fills in; the others are written by the program. */
export const blanksOf = (kind: EntryKind, about: About = {}, typed: Typed = {}): readonly Blank[] =>
  kindNamed(kind).blanks(about, typed)

/**
 * Reads what was typed into the blanks of a kind. Nothing is guessed: a figure without a unit is an
 * issue, one that has several meanings a question, and all of them come at once.
 *
 * @param typed  texts by the names of the blanks; an empty text is a blank left out
 * @example draftEntry('reading', { quantity: 'nitrate', value: '5 mg/L' }) // asks: of NO3, or of N?
 */
export function draftEntry<Kind extends EntryKind>(kind: Kind, typed: Typed, about: About = {}): Draft<Kind> {
  const declared = kindNamed(kind)
  const blanks = declared.blanks(about, typed)
  if (blanks.length === 0) return notByHand(declared.title)
  const read = fillIn(blanks, typed)
  if (!read.ok) return read
  const body = declared.understand(read.filled)
  if (isNotUnderstood(body)) return { ok: false, ...body }
  // The kind was looked up by its name, which the compiler cannot follow through the list.
  return { ok: true, body: body as BodyOf<Kind> }
}

/** The texts to begin a correction with: as they were typed, or such that they say the same. */
export function typedOf(entry: Entry): Typed {
  const { typed } = entry.body as { readonly typed?: Typed }
  return typed ?? kindNamed(entry.kind).fills(entry.body)
}

/** One sentence for lists and screen readers. */
export const sayEntry = (entry: Entry): string => kindNamed(entry.kind).says(entry.body)

const isNotUnderstood = (body: unknown): body is NotUnderstood =>
  typeof body === 'object' && body !== null && 'issues' in body && 'questions' in body

function notByHand(title: string): { readonly ok: false } & NotUnderstood {
  const accepted = 'Entries that a person fills in.'
  const next = 'Choose another kind.'
  const issue = { code: 'not-by-hand', where: title, got: 'it has no blanks to fill in', accepted, next }
  return { ok: false, issues: [issue], questions: [] }
}
