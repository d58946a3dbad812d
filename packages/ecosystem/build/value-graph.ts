import type { Input, Layout } from '../src/declare/index.ts'
import { type Expression, parse } from './parse.ts'

/** A number that formulas find in memory: an input of the process, or the litres that a concentration is over. */
export type Found = { readonly input: number } | 'volume'

interface Kind {
  /** It changes with the states; else parameters and settings alone give it. */
  readonly live: boolean
  /** Each instance has its own; else one serves all instances. */
  readonly each: boolean
}

/** One value of a process, made once however often formulas name it. */
export type Value = Kind & {
  readonly name: string
  readonly of: readonly Value[]
} & (
    | { readonly type: 'number'; readonly number: number }
    | { readonly type: 'found'; readonly found: Found }
    | { readonly type: 'operation'; readonly operator: '+' | '-' | '*' | '/' }
    | { readonly type: 'negative' }
    | { readonly type: 'form'; readonly form: string }
  )

export interface ValueGraph {
  /** All values, each after those it is made of. */
  readonly values: readonly Value[]
  readonly fluxes: readonly Value[]
  readonly gathers: readonly Value[]
}

/** A value, less its name and what follows from what it is made of. */
type Made =
  | { readonly type: 'number'; readonly number: number }
  | { readonly type: 'operation'; readonly operator: '+' | '-' | '*' | '/' }
  | { readonly type: 'negative' }
  | { readonly type: 'form'; readonly form: string }

/** The formulas of a process with their terms put in, and what is the same in two of them made one. */
export function valueGraph(layout: Layout): ValueGraph {
  const known = new Map<string, Value>()
  const once = (key: string, make: (name: string) => Value): Value => {
    const value = known.get(key) ?? make(`x${known.size}`)
    known.set(key, value)
    return value
  }
  const made = (of: readonly Value[], what: Made): Value =>
    once(`${JSON.stringify(what)} of ${of.map(({ name }) => name).join(' ')}`, (name) => ({
      ...what,
      name,
      of,
      live: of.some(({ live }) => live),
      each: of.some(({ each }) => each),
    }))
  const found = (key: Found, kind: Kind): Value =>
    once(`found ${JSON.stringify(key)}`, (name) => ({ type: 'found', found: key, name, of: [], ...kind }))
  const positive = (value: Value): Value => made([value], { type: 'form', form: 'positive' })

  const read = (name: string): Value => {
    const k = layout.inputs.findIndex((input) => input.name === name)
    const input = layout.inputs[k]
    if (!input) throw new Error(`"${name}" is no input.`)
    const value = found({ input: k }, kindOf(input))
    if (input.from === 'parameter') return value
    switch (input.read.read) {
      case 'amount':
      case 'state':
        return positive(value)
      case 'concentration':
        return made([positive(value), found('volume', { live: false, each: false })], {
          type: 'operation',
          operator: '/',
        })
      case 'setting':
      case 'gathered':
        return value
    }
  }
  const terms = new Map(layout.terms.map(({ name, is }) => [name, parse(is)]))
  const named = (name: string): Value => {
    const term = terms.get(name)
    return term ? valueOfFormula(term) : read(name)
  }
  const valueOfFormula = (expression: Expression): Value => {
    switch (expression.type) {
      case 'number':
        return made([], { type: 'number', number: expression.value })
      case 'name':
        return named(expression.name)
      case 'negative':
        return made([valueOfFormula(expression.of)], { type: 'negative' })
      case 'operation': {
        const { operator, left, right } = expression
        return made([valueOfFormula(left), valueOfFormula(right)], { type: 'operation', operator })
      }
      case 'form':
        return made(expression.arguments.map(valueOfFormula), { type: 'form', form: expression.form })
    }
  }
  const gathers = layout.gathers.map(({ sum }) => valueOfFormula(parse(sum)))
  const fluxes = layout.fluxes.map(({ rate }) => valueOfFormula(parse(rate)))
  return { values: [...known.values()], fluxes, gathers }
}

function kindOf(input: Input): Kind {
  if (input.from === 'parameter') {
    const { fact, known } = input.parameter
    return { live: false, each: typeof fact === 'function' || known !== undefined }
  }
  const { read } = input
  switch (read.read) {
    case 'amount':
    case 'concentration':
      return { live: true, each: typeof read.account === 'function' }
    case 'state':
      return { live: true, each: typeof read.state === 'function' }
    case 'setting':
      return { live: false, each: typeof read.id === 'function' }
    case 'gathered':
      return { live: true, each: true }
  }
}

/** Some values and all that they are made of; what `stop` holds is not followed further. */
export function madeOf(
  roots: readonly Value[],
  stop: (value: Value) => boolean = () => false,
): ReadonlySet<Value> {
  const all = new Set<Value>()
  const visit = (value: Value): void => {
    if (all.has(value)) return
    all.add(value)
    if (!stop(value)) for (const inner of value.of) visit(inner)
  }
  for (const root of roots) visit(root)
  return all
}
