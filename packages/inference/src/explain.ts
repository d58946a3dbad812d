import {
  type Atom,
  type Block,
  type Input,
  layoutOf,
  type Model,
  type Parameter,
  stateId,
} from '@holdfast/ecosystem'
import type { FactsOfSystem } from '@holdfast/facts'
import type { Explanation, FactUsed } from './answers.ts'
import { cited } from './cited.ts'

type Transfer = Block['process']['transfers'][number]

const made = new WeakMap<Model, readonly Explanation[]>()

/** How each process of a model works at each of its instances, made from its declaration: once for a model. */
export function explanations(model: Model): readonly Explanation[] {
  const known = made.get(model)
  if (known) return known
  const all = [...model.blocks, ...model.events.values()].flatMap((block) =>
    block.names.map((instance, n) => explanation(model, block, instance, n)),
  )
  made.set(model, all)
  return all
}

function explanation(model: Model, block: Block, instance: string, n: number): Explanation {
  const { process, inputs } = block
  const layout = layoutOf(process)
  const values = new Map<string, string>()
  const facts: FactUsed[] = []
  layout.inputs.forEach((input, k) => {
    const at = inputs[n * layout.inputs.length + k]
    const value = constantValue(model, block, input, at)
    if (value !== undefined) values.set(input.name, written(value))
    if (input.from === 'parameter') facts.push(parameterUsed(model.facts, model.parameters[at], input.name))
  })
  const terms = layout.terms.map(({ name, is }) => [`${name} = ${is}`, undefined] as const)
  const rates = process.transfers.map((transfer) => [formulaOf(transfer), atomsOf(transfer)] as const)
  const each = layout.fluxes.length
  const from = block.firstFlux + n * each
  const fluxes = (process.event ? model.eventFluxes : model.fluxes).slice(from, from + each)
  const accounts = fluxes.flatMap((flux) => [flux.from, flux.to]).filter((index) => index >= 0)
  return {
    process: process.id,
    instance,
    title: process.title,
    says: process.says,
    formulas: [...new Map([...terms, ...rates])].map(([formula, moves]) => ({
      formula,
      withValues: putIn(formula, values),
      ...(moves && { moves }),
    })),
    facts,
    accounts: [...new Set(accounts.map((index) => stateId(model.states[index]).split('/')[0] ?? ''))],
  }
}

/** What is the same all the time: settings of the system and typical values of facts. */
function constantValue(model: Model, { process }: Block, input: Input, index: number): number | undefined {
  if (input.from === 'parameter') return model.parameters[index].band.typical
  if (input.read.read !== 'setting') return undefined
  const value = model.settings.values[index]
  // In an event what is nought stands for what an entry will say: its volume, its dose.
  return process.event && value === 0 ? undefined : value
}

const written = (value: number): string => String(Number(value.toPrecision(3)))

const putIn = (formula: string, values: ReadonlyMap<string, string>): string =>
  formula.replace(/[A-Za-z][A-Za-z0-9]*/g, (name) => values.get(name) ?? name)

/** The fact as the formula sees it: in the formula's unit, with the keeper's own band where there is one. */
function parameterUsed(
  facts: FactsOfSystem,
  { fact: id, band, unit, known }: Parameter,
  name: string,
): FactUsed {
  const used = { ...factUsed(facts, id, name), ...band, unit }
  return known ? { ...used, source: 'You, in the description of the system', provenance: 'your own' } : used
}

/** A fact as it holds for the system, with whose word it is. */
export function factUsed(facts: FactsOfSystem, id: string, name: string): FactUsed {
  const { title, low, typical, high, unit, source, provenance } = facts.fact(id)
  const own = facts.own.get(id)
  const used = { id, name, title, low, typical, high, unit }
  if (own === undefined) return { ...used, source: cited(source), provenance }
  const said = [own.reason, own.source].filter((part) => part !== undefined).join('; ')
  return { ...used, source: `You: ${said}`, provenance: 'your own' }
}

function atomsOf(transfer: Transfer): readonly Atom[] | undefined {
  if (transfer.kind === 'change') return undefined
  return transfer.kind === 'carry' ? transfer.atoms : [transfer.atom]
}

function formulaOf(transfer: Transfer): string {
  switch (transfer.kind) {
    case 'split':
    case 'move':
      return `${transfer.atom} = ${transfer.rate}`
    case 'carry':
      return `${transfer.atoms.join(', ')} = (${transfer.rate}) * amount`
    case 'change':
      return `cover = ${transfer.rate}`
  }
}
