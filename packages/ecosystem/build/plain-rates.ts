import type { Block, Model } from '../src/assemble/model.ts'
import { layoutOf } from '../src/declare/index.ts'
import { evaluate } from './evaluate.ts'
import { type Expression, parse } from './parse.ts'

/** Everything that a formula may look up. */
export interface Numbers {
  readonly y: Float64Array
  readonly settings: Float64Array
  readonly parameters: Float64Array
}

/** The formulas of one process, read once. */
interface Formulas {
  readonly block: Block
  readonly inputs: ReturnType<typeof layoutOf>['inputs']
  readonly terms: ReadonlyMap<string, Expression>
  readonly gathers: readonly Expression[]
  readonly fluxes: readonly Expression[]
}

const formulasOf = (block: Block): Formulas => {
  const layout = layoutOf(block.process)
  return {
    block,
    inputs: layout.inputs,
    terms: new Map(layout.terms.map(({ name, is }) => [name, parse(is)])),
    gathers: layout.gathers.map(({ sum }) => parse(sum)),
    fluxes: layout.fluxes.map(({ rate }) => parse(rate)),
  }
}

/**
 * Rates of a model by walking its formulas, slow and plain: the kernel is held equal to it.
 *
 * @returns a function that writes the rates of the processes, or the amounts of one event
 */
export function plainRates(model: Model, event?: string): (numbers: Numbers, out: Float64Array) => void {
  const lasting = model.blocks.map(formulasOf)
  const blocks =
    event === undefined
      ? lasting
      : [...model.events.values()].filter(({ process }) => process.id === event).map(formulasOf)
  const gathered = new Float64Array(model.gathered)
  return (numbers, out) => {
    gathered.fill(0)
    for (const formulas of lasting)
      formulas.block.names.forEach((_, n) => {
        const value = lookUp(formulas, n, numbers, gathered)
        formulas.gathers.forEach((gather, k) => {
          gathered[formulas.block.gathers[n * formulas.gathers.length + k]] += evaluate(gather, value)
        })
      })
    for (const formulas of blocks)
      formulas.block.names.forEach((_, n) => {
        const value = lookUp(formulas, n, numbers, gathered)
        formulas.fluxes.forEach((flux, k) => {
          out[formulas.block.firstFlux + n * formulas.fluxes.length + k] = evaluate(flux, value)
        })
      })
  }
}

/** Finds the value of a name for one instance; terms are worked out when asked for. */
function lookUp(
  { block, inputs, terms }: Formulas,
  instance: number,
  { y, settings, parameters }: Numbers,
  gathered: Float64Array,
): (name: string) => number {
  const value = (name: string): number => {
    const term = terms.get(name)
    if (term) return evaluate(term, value)
    const k = inputs.findIndex((input) => input.name === name)
    const input = inputs[k]
    if (!input) throw new Error(`${block.process.id}: "${name}" is no input.`)
    const at = block.inputs[instance * inputs.length + k]
    if (input.from === 'parameter') return parameters[at]
    switch (input.read.read) {
      case 'amount':
      case 'state':
        return Math.max(0, y[at])
      case 'concentration':
        return Math.max(0, y[at]) / settings[0]
      case 'setting':
        return settings[at]
      case 'gathered':
        return gathered[at]
    }
  }
  return value
}
