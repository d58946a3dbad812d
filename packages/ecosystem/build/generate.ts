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
function neededNames(layout: Layout, results: readonly Expression[]): ReadonlySet<string> {
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

function inputText(input: Input, k: number): string {
  const at = `ix[o + ${k}]`
  if (input.from === 'parameter') return `p[${at}]`
  switch (input.read.read) {
    case 'amount':
      return `F.positive(y[${at}])`
    case 'concentration':
      return `F.positive(y[${at}]) / s[0]`
    case 'state':
      return `F.positive(y[${at}])`
    case 'setting':
      return `s[${at}]`
    case 'gathered':
      return `g[${at}]`
  }
}

const identifier = (name: string): string => `_${name.replace('$', 'carried')}`

/** JavaScript of an expression, bracketed so that the order of operations is that of the formula. */
export function text(expression: Expression): string {
  switch (expression.type) {
    case 'number':
      return String(expression.value)
    case 'name':
      return identifier(expression.name)
    case 'negative':
      return `(-${text(expression.of)})`
    case 'operation':
      return `(${text(expression.left)} ${expression.operator} ${text(expression.right)})`
    case 'form':
      return `F.${expression.form}(${expression.arguments.map(text).join(', ')})`
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
