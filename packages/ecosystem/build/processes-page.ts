import { catalogueAlone, fact, source } from '@holdfast/facts'
import type { Chosen } from '../src/declare/index.ts'
import { type Account, chosen, layoutOf, type Named, type Process } from '../src/declare/index.ts'
import type { System } from '../src/system.ts'

/** More ids than this are shown by the first of them: the others differ in a name only. */
const shown = 4

const opening = `# The processes

What moves nitrogen, phosphorus, carbon and silicon in the model, how fast, and on whose word. This page is made
from the declarations in \`packages/ecosystem/src\` by \`node scripts/run.mjs make-processes-page\`; the model runs on
the same text. [The model](model.md) says how they work together.

A rate is in µmol a day, that of an event an amount or a share at an instant. Of a number the low, typical and high
value are given: 5 %, middle and 95 % of what one tank may have.
`

/** The page that lists every process and event: what it says, its formulas, its numbers and their sources. */
export function processesPage(
  groups: readonly (readonly [string, readonly Process[]])[],
  specimen: System,
): string {
  return [
    opening,
    ...groups.flatMap(([title, declarations]) => [
      `## ${title}\n`,
      ...declarations.map((one) => section(one, specimen)),
    ]),
  ].join('\n')
}

function section(declaration: Process, specimen: System): string {
  const instances = declaration.each(specimen, catalogueAlone)
  const { terms, gathers } = layoutOf(declaration)
  return [
    `### ${declaration.title}\n`,
    `${declaration.says} Source of the form: ${sourceText(declaration.source)}.\n`,
    ...formulas([
      ...gathers.map(({ name, sum, unit }) => `${name} = sum of ${sum}   [${unit}]`),
      ...terms.map(({ name, is, unit }) => `${name} = ${is}   [${unit}]`),
    ]),
    ...transfersOf(declaration, instances),
    ...parametersOf(declaration, instances),
  ].join('\n')
}

const formulas = (lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['```text', ...lines, '```\n']

function transfersOf(declaration: Process, instances: readonly Named<unknown>[]): readonly string[] {
  const first = instances[0]
  if (first === undefined) return []
  const rows = layoutOf(declaration).fluxes.map(({ atom, from, to, state, rate, bothWays }) => {
    const ends = state
      ? ['', instances.map(({ of }) => chosen(state, of)).find((own) => own !== undefined)?.title ?? '']
      : [from, to].map((end) => (end ? titleOf(end, first.of) : ''))
    return `| ${atom ?? ''} | ${ends[0]} | ${ends[1]} | \`${plain(rate)}\`${bothWays ? ' (both ways)' : ''} |`
  })
  return ['| atom | from | to | rate |', '| --- | --- | --- | --- |', ...rows, '']
}

const titleOf = (account: Chosen<unknown, Account>, instance: unknown): string =>
  chosen(account, instance).title

/** Names of what a carry moves mean the amount that is there. */
const plain = (rate: string): string => rate.replaceAll(/\$\d+(\w+)/g, 'amount of $1').replaceAll('|', '\\|')

function parametersOf(declaration: Process, instances: readonly Named<unknown>[]): readonly string[] {
  const rows = Object.entries(declaration.parameters).flatMap(([name, parameter]) => {
    const ids = [...new Set(instances.map(({ of }) => chosen(parameter.fact, of)))]
    const listed = ids.length > shown ? ids.slice(0, 1) : ids
    return listed.map((id) => {
      const { low, typical, high, unit, title, provenance, source: key } = fact(id)
      const more = ids.length > listed.length ? ` and ${ids.length - listed.length} like it` : ''
      const band = [low, typical, high].map((value) => Number(value.toPrecision(3))).join(', ')
      return `| ${name} | ${title}${more} | \`${id}\` | ${unit === '1' ? band : `${band} ${unit}`} | ${provenance}: ${sourceText(key)} |`
    })
  })
  if (rows.length === 0) return []
  return [
    '| name | what | fact | low, typical, high | known by |',
    '| --- | --- | --- | --- | --- |',
    ...rows,
    '',
  ]
}

function sourceText(key: string): string {
  if (key === 'mass balance') return key
  const { authors, year, title, where, doi } = source(key)
  const words = [year === null ? authors : `${authors} ${year}`, title, where].filter(Boolean).join(', ')
  return doi === undefined ? words : `${words}, doi ${doi}`
}
