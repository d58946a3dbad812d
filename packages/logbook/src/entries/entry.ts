import { isMoment, momentForm } from '../model-day.ts'
import type { kinds } from './index.ts'
import { count, name } from './kind.ts'
import { z } from './schema.ts'

type KindOf = (typeof kinds)[number]

/** What every entry carries, whatever its kind. */
export const envelope = z
  .looseObject({
    /** Made by the client: UUIDv7, or UUIDv5 for an imported value. Identity, not order. */
    id: z.uuid(),
    workspace: name,
    system: name,
    kind: name,
    /** Version of the body. */
    v: count,
    /**
     * When it was so, as said: a civil date (precision 'day'), or a civil date and time with offset and
     * zone such as 2026-03-01T08:10+01:00[Europe/Berlin] (precision 'minute').
     */
    at: z.string().check(z.regex(momentForm, { abort: true }), z.refine(isMoment)),
    precision: z.enum(['day', 'minute']),
    /** When it was written down, by the clock of the device; never used for order. */
    madeAt: z.iso.datetime({ offset: true }),
    by: name,
    device: name,
    /** The entry that this one corrects. */
    replaces: z.exactOptional(z.uuid()),
    /** Entries made together, such as one import: one undo takes them all back. */
    batch: z.exactOptional(name),
    body: z.record(z.string(), z.unknown()),
  })
  .check(
    z.refine(({ at, precision }) => at.includes('T') === (precision === 'minute'), { path: ['precision'] }),
  )

/** The parts of an entry that do not depend on its kind. */
export interface Envelope {
  readonly id: string
  readonly workspace: string
  readonly system: string
  readonly v: number
  readonly at: string
  readonly precision: 'day' | 'minute'
  readonly madeAt: string
  readonly by: string
  readonly device: string
  readonly replaces?: string
  readonly batch?: string
}

/** The names of the kinds. */
export type EntryKind = KindOf['name']

type EntryFor<K extends KindOf> = K extends KindOf
  ? Envelope & { readonly kind: K['name']; readonly body: Readonly<z.infer<K['body']>> }
  : never

/** One immutable entry of the log, at the newest version of its kind. */
export type Entry = EntryFor<KindOf>

/** Entries of one kind. */
export type EntryOf<Name extends EntryKind> = Extract<Entry, { kind: Name }>

/** The body of a kind. */
export type BodyOf<Name extends EntryKind> = EntryOf<Name>['body']

/** An entry as the store gives it back: with the time at which the store received it. */
export type Stored<E extends Entry = Entry> = E & { readonly knownAt: string }
