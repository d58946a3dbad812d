import type { Layout } from '../src/declare/index.ts'
import { type Expression, namesIn, parse } from './parse.ts'

/** The names that some formulas use, terms followed through. */
export function neededNames(layout: Layout, formulas: readonly Expression[]): ReadonlySet<string> {
  const terms = new Map(layout.terms.map(({ name, is }) => [name, parse(is)]))
  const needed = new Set<string>()
  const visit = (name: string): void => {
    if (needed.has(name)) return
    needed.add(name)
    const term = terms.get(name)
    if (term) for (const inner of namesIn(term)) visit(inner)
  }
  for (const name of formulas.flatMap(namesIn)) visit(name)
  return needed
}
