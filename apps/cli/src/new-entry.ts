import { randomBytes } from 'node:crypto'
import type { BodyOf, Entry, Logbook } from '@holdfast/logbook'

/** Who writes, as every entry of this program says. */
export const writer = { by: 'keeper', device: 'command line' } as const

/** A UUIDv7: the time in milliseconds, then chance (RFC 9562, section 5.7). */
export function newId(now: Date): string {
  const hex = now.getTime().toString(16).padStart(12, '0')
  const chance = randomBytes(10)
  chance[0] = (chance[0] & 0x0f) | 0x70
  chance[2] = (chance[2] & 0x3f) | 0x80
  const rest = chance.toString('hex')
  return [hex.slice(0, 8), hex.slice(8), rest.slice(0, 4), rest.slice(4, 8), rest.slice(8)].join('-')
}

/** An entry of a day, written now. */
export function newEntry<Kind extends 'system' | 'retraction'>(
  { workspace }: Logbook,
  about: { readonly system: string; readonly kind: Kind; readonly at: string; readonly body: BodyOf<Kind> },
  now: Date,
): Entry {
  const id = newId(now)
  const madeAt = now.toISOString()
  // Kind and body belong together by the signature, which the compiler does not carry into the union.
  return { id, workspace, v: 1, precision: 'day', madeAt, ...writer, ...about } as Entry
}
