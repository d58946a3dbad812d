import { v7 } from 'uuid'

import type { BodyOf, EntryKind, EntryOf } from './entry.ts'
import { kindNamed } from './index.ts'

/** What makes an entry beside its id, version and the time at which it is written down. */
export interface EntryParts<Kind extends EntryKind> {
  readonly workspace: string
  readonly system: string
  readonly kind: Kind
  readonly body: BodyOf<Kind>
  /** When it was so, as `readMoment` gives it. */
  readonly at: string
  readonly precision: 'day' | 'minute'
  readonly by: string
  readonly device: string
  readonly replaces?: string
  readonly batch?: string
}

/**
 * An entry written down now, with an id of its own (UUIDv7, RFC 9562): made before it is sent, so that
 * sending twice stores once.
 */
export function composeEntry<Kind extends EntryKind>(parts: EntryParts<Kind>, now: Date): EntryOf<Kind> {
  const { v } = kindNamed(parts.kind)
  const entry = { id: v7({ msecs: now.getTime() }), v, madeAt: now.toISOString(), ...parts }
  // Kind and body belong together by the signature, which the compiler does not carry into the union.
  return entry as unknown as EntryOf<Kind>
}
