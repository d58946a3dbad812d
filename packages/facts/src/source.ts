import list from './data/sources.json' with { type: 'json' }
import { UnknownKey } from './unknown-key.ts'

/** A publication, a table of a trade, or a body of practice that values rest on. */
export interface Source {
  readonly key: string
  readonly authors: string
  /** null where it has none or it was not shown. */
  readonly year: number | null
  readonly title?: string
  readonly where?: string
  readonly doi?: string
  readonly url?: string
  /** How much of it was seen; n/a where there is no text to see. */
  readonly seen: 'abstract' | 'in full' | 'no' | 'n/a'
}

const all = list as readonly Source[]
const byKey = new Map(all.map((one) => [one.key, one]))

/** All sources, in the order of their keys. */
export const sources = (): readonly Source[] => all

/**
 * The source of a key.
 * @throws UnknownKey with the nearest keys
 */
export function source(key: string): Source {
  const found = byKey.get(key)
  if (found === undefined) throw new UnknownKey('unknown-source', 'Source', key, byKey.keys())
  return found
}
