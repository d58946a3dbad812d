import type { Block, Model } from '@holdfast/ecosystem'
import { fact, source } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import type { Explanation, FactUsed } from './answers.ts'

type Declaration = Block['process']
type Transfer = Declaration['transfers'][number]

/**
 * How each process of a system works, made from its declaration: what the pages show as the derivation
 * of a figure is the text that the kernel was made from.
 */
export function explanationsOf(model: Model): readonly Explanation[] {
  return [...model.blocks, ...model.events.values()].flatMap((block) =>
    block.instances.map((instance, i): Explanation => {
      const { process } = block
      const facts = factsOf(process, instance)
      return {
        process: process.id,
        instance: block.names[i] ?? '',
        title: process.title,
        says: process.says,
        formulas: formulasOf(process).map((formula) => ({
          formula,
          withValues: withValues(formula, valuesOf(process, instance, model, facts)),
        })),
        facts,
        accounts: accountsOf(process, instance),
      }
    }),
  )
}

/** Titles of accounts for people, by id. */
export const accountTitles = (model: Model): Readonly<Record<string, string>> =>
  Object.fromEntries(
    model.states.flatMap((state) =>
      state.kind === 'atoms' ? [[state.account.id, state.account.title]] : [],
    ),
  )

function factsOf(process: Declaration, instance: unknown): readonly FactUsed[] {
  return Object.entries(process.parameters).map(([name, parameter]) => {
    const found = fact(chosen(parameter.fact, instance))
    const known = parameter.known?.(instance)
    const { authors, year, title } = source(found.source)
    const inUnit = (value: number) => convert(value, found.unit, parameter.unit)
    return {
      id: found.id,
      name,
      title: found.title,
      low: known?.low ?? inUnit(found.low),
      typical: known?.typical ?? inUnit(found.typical),
      high: known?.high ?? inUnit(found.high),
      unit: parameter.unit,
      source: known ? 'your description of the system' : [authors, year, title].filter(Boolean).join(', '),
      provenance: known ? 'as you gave it' : found.provenance,
    }
  })
}

function formulasOf(process: Declaration): readonly string[] {
  const terms = Object.entries(process.terms ?? {}).map(([name, { is }]) => `${name} = ${is}`)
  const rates = process.transfers.map((transfer) => `${rateName(process)} = ${rateOf(transfer)}`)
  return [...new Set([...terms, ...rates])].map((text) => text.replaceAll('*', '×').replaceAll('/', '÷'))
}

const rateName = (process: Declaration) => (process.event ? 'moved at once' : 'moved per day')

function rateOf(transfer: Transfer): string {
  if (transfer.kind !== 'split') return transfer.rate
  return `${transfer.rate}, split by ${transfer.into.map(({ share }) => share).join(', ')}`
}

/** Typical values of the facts and the settings of the system; states have no one value over a span. */
function valuesOf(
  process: Declaration,
  instance: unknown,
  model: Model,
  facts: readonly FactUsed[],
): ReadonlyMap<string, string> {
  const values = new Map(facts.map((used) => [used.name, valueText(used.typical)]))
  for (const [name, read] of Object.entries(process.reads)) {
    if (read.read !== 'setting') continue
    const at = model.settings.ids.indexOf(chosen(read.id, instance))
    const value = model.settings.values[at]
    // An event fills its settings when it happens; before that they are nought and say nothing.
    if (value !== undefined && !(process.event && value === 0)) values.set(name, valueText(value))
  }
  return values
}

function withValues(formula: string, values: ReadonlyMap<string, string>): string {
  const put = formula.replace(/[a-z]\w*/gi, (name) => values.get(name) ?? name)
  return put === formula ? '' : put
}

const valueText = (value: number) => String(Number(value.toPrecision(3)))

function accountsOf(process: Declaration, instance: unknown): readonly string[] {
  const ids = process.transfers.flatMap((transfer): string[] => {
    if (transfer.kind === 'change') return []
    const from = chosen(transfer.from, instance).id
    if (transfer.kind === 'split') return [from, ...transfer.into.map(({ to }) => chosen(to, instance).id)]
    return [from, chosen(transfer.to, instance).id]
  })
  return [...new Set(ids)]
}

const chosen = <T>(choice: T | ((instance: unknown) => T), instance: unknown): T =>
  typeof choice === 'function' ? (choice as (instance: unknown) => T)(instance) : choice
