import list from './data/cautions.json' with { type: 'json' }
import type { Provenance } from './fact.ts'
import { UnknownKey } from './unknown-key.ts'

/** A warning that stands before what may hurt a person, an animal or the sea. */
export interface Caution {
  readonly key: string
  readonly title: string
  readonly says: string
  readonly source: string
  readonly provenance: Provenance
}

const all = list as readonly Caution[]

/** All cautions, the gravest first. */
export const cautions = (): readonly Caution[] => all

/** @throws UnknownKey with the nearest cautions */
export function caution(key: string): Caution {
  const found = all.find((one) => one.key === key)
  if (found !== undefined) return found
  throw new UnknownKey(
    'unknown-caution',
    'Caution',
    key,
    all.map((one) => one.key),
  )
}
