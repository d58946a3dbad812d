import { facts } from './catalogue.ts'
import type { Fact } from './fact.ts'
import { familyOf } from './family.ts'
import { source } from './source.ts'

/** The facts in use whose text holds every word, whatever its case, family by family; all without a word. */
export function factsHolding(words: string): readonly Fact[] {
  const each = words.toLowerCase().split(/\s+/).filter(Boolean)
  return inUse.filter((fact) => each.every((word) => textOf(fact).includes(word)))
}

const inUse = facts().filter(({ retired }) => !retired)

function textOf({ id, title, unit, holds, note = '', aside = '', provenance, source: key }: Fact): string {
  const { authors, year } = source(key)
  return [id, familyOf(id), title, unit, holds, note, aside, provenance, authors, year]
    .join(' ')
    .toLowerCase()
}
