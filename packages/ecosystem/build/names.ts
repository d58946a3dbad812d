import type { Layout } from '../src/declare/index.ts'
import { type Expression, namesIn, parse } from './parse.ts'

/** The names that some formulas use, terms followed through: each after those that it is made of. */
export function neededNames(layout: Layout, formulas: readonly Expression[]): ReadonlySet<string> {
  const terms = new Map(layout.terms.map(({ name, is }) => [name, parse(is)]))
  const needed = new Set<string>()
  const visit = (name: string): void => {
    if (needed.has(name)) return
    const term = terms.get(name)
    if (term) for (const inner of namesIn(term)) visit(inner)
    needed.add(name)
  }
  for (const name of formulas.flatMap(namesIn)) visit(name)
  return needed
}

/** The terms among such names, in their order. */
export const termsAmong = (layout: Layout, needed: ReadonlySet<string>): Layout['terms'] =>
  [...needed].flatMap((name) => layout.terms.filter((term) => term.name === name))
