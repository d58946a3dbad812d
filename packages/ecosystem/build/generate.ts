import { type Input, type Layout, layoutOf, type Process } from '../src/declare/index.ts'
import { type Expression, namesIn, parse } from './parse.ts'

/**
 * Writes the kernel: for each process a function that works out its gathers and one that works out
 * its fluxes, as plain JavaScript over flat arrays. It runs at build time; what ships makes no code.
 *
 * Arguments: y amounts and states, s settings (slot 0 is the water, L), p parameters, g gathered sums,
 * ix indexes of the inputs of all instances, o where this instance's begin, out and f where to write.
 */
export function generateKernel(processes: readonly Process[]): string {
  const entries = processes.map((declaration) => {
    const layout = layoutOf(declaration)
    const fluxes = layout.fluxes.map((flux) => parse(flux.rate))
    const gathers = layout.gathers.map((gather) => parse(gather.sum))
    checkNames(declaration, layout, [...fluxes, ...gathers])
    return `${JSON.stringify(declaration.id)}: {
  inputs: ${layout.inputs.length}, fluxes: ${fluxes.length}, gathers: ${gathers.length},
  gather: ${gathers.length === 0 ? 'null' : functionOf(layout, gathers, 'gather')},
  rates: ${functionOf(layout, fluxes, 'rates')}
}`
  })
  return `import * as F from '@holdfast/ecosystem/forms'\nexport const kernel = {\n${entries.join(',\n')}\n}\n`
}

function functionOf(layout: Layout, results: readonly Expression[], kind: 'gather' | 'rates'): string {
  const needed = neededNames(layout, results)
  const lines: string[] = []
  layout.inputs.forEach((input, k) => {
    if (needed.has(input.name)) lines.push(`const ${identifier(input.name)} = ${inputText(input, k)}`)
  })
  for (const term of layout.terms)
    if (needed.has(term.name)) lines.push(`const ${identifier(term.name)} = ${text(parse(term.is))}`)
  results.forEach((expression, k) => {
    lines.push(
      kind === 'gather' ? `g[gx[gf + ${k}]] += ${text(expression)}` : `out[f + ${k}] = ${text(expression)}`,
    )
  })
  const signature = kind === 'gather' ? '(y, s, p, g, ix, o, gx, gf)' : '(y, s, p, g, ix, o, out, f)'
  return `function ${signature} {\n    ${lines.join('\n    ')}\n  }`
}

/** What the results use, terms followed through. */
export function neededNames(layout: Layout, results: readonly Expression[]): ReadonlySet<string> {
  const terms = new Map(layout.terms.map((term) => [term.name, parse(term.is)]))
  const needed = new Set<string>()
  const visit = (name: string): void => {
    if (needed.has(name)) return
    needed.add(name)
    const term = terms.get(name)
    if (term) for (const inner of namesIn(term)) visit(inner)
  }
  for (const name of results.flatMap(namesIn)) visit(name)
  return needed
}

/** How the kernel finds the k-th input of an instance. */
export function inputText(input: Input, k: number, { form }: Dialect = javaScript): string {
  const at = `ix[o + ${k}]`
  if (input.from === 'parameter') return `p[${at}]`
  switch (input.read.read) {
    case 'amount':
      return `${form('positive')}(y[${at}])`
    case 'concentration':
      return `${form('positive')}(y[${at}]) / s[0]`
    case 'state':
      return `${form('positive')}(y[${at}])`
    case 'setting':
      return `s[${at}]`
    case 'gathered':
      return `g[${at}]`
  }
}

/** What differs between the languages that formulas are written in. */
export interface Dialect {
  readonly form: (name: string) => string
  readonly number: (value: number) => string
}

const javaScript: Dialect = { form: (name) => `F.${name}`, number: String }

export const identifier = (name: string): string => `_${name.replace('$', 'carried')}`

/** Code of an expression, bracketed so that the order of operations is that of the formula. */
export function text(expression: Expression, dialect: Dialect = javaScript): string {
  const inner = (part: Expression): string => text(part, dialect)
  switch (expression.type) {
    case 'number':
      return dialect.number(expression.value)
    case 'name':
      return identifier(expression.name)
    case 'negative':
      return `(-${inner(expression.of)})`
    case 'operation':
      return `(${inner(expression.left)} ${expression.operator} ${inner(expression.right)})`
    case 'form':
      return `${dialect.form(expression.form)}(${expression.arguments.map(inner).join(', ')})`
  }
}

/** @throws Error when a formula names what is not declared, or something declared is never used */
function checkNames(declaration: Process, layout: Layout, results: readonly Expression[]): void {
  const declared = [...layout.inputs.map((input) => input.name), ...layout.terms.map((term) => term.name)]
  const twice = declared.filter((name, k) => declared.indexOf(name) !== k)
  const used = neededNames(layout, results)
  const unknown = [...used].filter((name) => !declared.includes(name))
  const idle = declared.filter((name) => !used.has(name))
  const problems = [
    ...twice.map((name) => `"${name}" is declared twice`),
    ...unknown.map((name) => `"${name}" is used and not declared`),
    ...idle.map((name) => `"${name}" is declared and never used`),
  ]
  if (problems.length > 0) throw new Error(`Process ${declaration.id}: ${problems.join('; ')}.`)
}
