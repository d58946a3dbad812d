import type { Block, Model } from '../src/assemble/model.ts'
import { type Input, layoutOf } from '../src/declare/index.ts'
import { ends, shapeOf } from '../src/simulate/index.ts'
import { type ExportedRun, orderedMoments } from './c-source.ts'
import { infix } from './infix.ts'
import { neededNames, termsAmong } from './names.ts'
import { type Expression, parse } from './parse.ts'

/** How a scripting language says what the equations need. */
export interface Dialect {
  readonly head: readonly string[]
  readonly identifier: (name: string) => string
  /** The k-th input of all instances, of a vector. */
  readonly inputs: (vector: string, k: number) => string
  readonly volume: string
  /** A function that adds the sums of all instances up, and one that gives their flows. */
  readonly gather: (name: string, body: readonly string[], sums: readonly string[]) => readonly string[]
  readonly rates: (name: string, body: readonly string[], rates: readonly string[]) => readonly string[]
  readonly list: (name: string, items: readonly string[]) => string
  readonly pair: (gather: string, rates: string) => string
}

/**
 * The equations of a model in a scripting language, written from the same declarations as the kernel: a function for
 * each process that works out all its instances at once with whole arrays. The forms are expected by the same names.
 */
export function scriptedSource(model: Model, dialect: Dialect): string {
  const events = [...model.events.values()]
  const both = ({ process }: Block): string => {
    const name = nameOf(process.id)
    return dialect.pair(`gather_${name}`, `rates_${name}`)
  }
  return [
    ...dialect.head,
    ...[...model.blocks, ...events].flatMap((block) => functionsOf(block, dialect)),
    dialect.list('processes', model.blocks.map(both)),
    dialect.list('events', events.map(both)),
    '',
  ].join('\n')
}

/** The numbers of a run, for the scripts that integrate it; places count from 0. */
export function numbersOf(model: Model, run: ExportedRun): unknown {
  const { tolerance } = shapeOf(model)
  const list = (values: ArrayLike<number>): readonly number[] => Array.from(values)
  const bound = (block: Block): unknown => ({
    name: nameOf(block.process.id),
    inputs: rows(block.inputs, layoutOf(block.process).inputs.length),
    gathers: rows(block.gathers, layoutOf(block.process).gathers.length),
    first: block.firstFlux,
  })
  const { from, to } = ends(model.fluxes)
  const event = ends(model.eventFluxes)
  return {
    states: model.states.length,
    gathered: Math.max(1, model.gathered),
    fluxes: model.fluxes.length,
    eventFluxes: model.eventFluxes.length,
    from: list(from),
    to: list(to),
    eventFrom: list(event.from),
    eventTo: list(event.to),
    tolerance: list(tolerance),
    settings: list(model.settings.values),
    parameters: list(run.parameters),
    start: list(run.start),
    samples: run.samples,
    last: run.to,
    processes: model.blocks.map(bound),
    events: [...model.events.values()].map(bound),
    moments: orderedMoments(model, run.timeline),
  }
}

const nameOf = (id: string): string => id.replaceAll(/[^a-z0-9]/g, '_')
const rows = (flat: Int32Array, width: number): readonly (readonly number[])[] =>
  width === 0
    ? []
    : Array.from({ length: flat.length / width }, (_, n) =>
        Array.from(flat.subarray(n * width, (n + 1) * width)),
      )

function functionsOf({ process }: Block, dialect: Dialect): readonly string[] {
  const layout = layoutOf(process)
  const name = nameOf(process.id)
  const { identifier } = dialect
  const text = (expression: Expression): string => infix(expression, identifier)
  const body = (formulas: readonly Expression[]): readonly string[] => {
    const needed = neededNames(layout, formulas)
    return [
      ...layout.inputs.flatMap((input, k) =>
        needed.has(input.name) ? [`${identifier(input.name)} = ${inputText(input, k, dialect)}`] : [],
      ),
      ...termsAmong(layout, needed).map(({ name: term, is }) => `${identifier(term)} = ${text(parse(is))}`),
    ]
  }
  const sums = layout.gathers.map(({ sum }) => parse(sum))
  const rates = layout.fluxes.map(({ rate }) => parse(rate))
  return [
    ...dialect.gather(name, body(sums), sums.map(text)),
    ...dialect.rates(name, body(rates), rates.map(text)),
  ]
}

function inputText(input: Input, k: number, { inputs, volume }: Dialect): string {
  if (input.from === 'parameter') return inputs('p', k)
  switch (input.read.read) {
    case 'amount':
    case 'state':
      return `positive(${inputs('y', k)})`
    case 'concentration':
      return `positive(${inputs('y', k)}) / ${volume}`
    case 'setting':
      return inputs('s', k)
    case 'gathered':
      return inputs('g', k)
  }
}
