import type { Block, Model } from '../src/assemble/model.ts'
import { type Input, layoutOf } from '../src/declare/index.ts'
import { ends, shapeOf } from '../src/simulate/index.ts'
import { type ExportedRun, orderedMoments } from './c-source.ts'
import { neededNames, termsAmong } from './names.ts'
import { type Expression, parse } from './parse.ts'

/**
 * The equations of a model in Python, written from the same declarations as the kernel: a function for each
 * process that works out all its instances at once with NumPy. The forms are expected by the same names.
 */
export function pythonSource(model: Model): string {
  const events = [...model.events.values()]
  return [
    'import numpy as np',
    'from forms import *',
    ...[...model.blocks, ...events].flatMap(functionsOf),
    `processes = [${model.blocks.map((block) => tupleOf(block)).join(', ')}]`,
    `events = [${events.map((block) => tupleOf(block)).join(', ')}]`,
    '',
  ].join('\n')
}

/** The numbers of a run, for `integrate.py`. */
export function pythonNumbers(model: Model, run: ExportedRun): unknown {
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
const identifier = (name: string): string => `_${name.replace('$', 'carried')}`

const tupleOf = ({ process }: Block): string => {
  const name = nameOf(process.id)
  return `(gather_${name}, rates_${name})`
}

const rows = (flat: Int32Array, width: number): readonly (readonly number[])[] =>
  width === 0
    ? []
    : Array.from({ length: flat.length / width }, (_, n) =>
        Array.from(flat.subarray(n * width, (n + 1) * width)),
      )

function functionsOf({ process }: Block): readonly string[] {
  const layout = layoutOf(process)
  const name = nameOf(process.id)
  const body = (formulas: readonly Expression[]): readonly string[] => {
    const needed = neededNames(layout, formulas)
    return [
      ...layout.inputs.flatMap((input, k) =>
        needed.has(input.name) ? [`    ${identifier(input.name)} = ${inputText(input, k)}`] : [],
      ),
      ...termsAmong(layout, needed).map(
        ({ name: term, is }) => `    ${identifier(term)} = ${text(parse(is))}`,
      ),
    ]
  }
  const gathers = layout.gathers.map(({ sum }) => parse(sum))
  const fluxes = layout.fluxes.map(({ rate }) => parse(rate))
  return [
    `def gather_${name}(y, s, p, g, ix, gx):`,
    ...body(gathers),
    ...gathers.map((formula, k) => `    np.add.at(g, gx[:, ${k}], ${text(formula)})`),
    '    return',
    `def rates_${name}(y, s, p, g, ix, out):`,
    ...body(fluxes),
    ...fluxes.map((formula, k) => `    out[:, ${k}] = ${text(formula)}`),
    '    return',
  ]
}

function inputText(input: Input, k: number): string {
  const at = `[ix[:, ${k}]]`
  if (input.from === 'parameter') return `p${at}`
  switch (input.read.read) {
    case 'amount':
    case 'state':
      return `positive(y${at})`
    case 'concentration':
      return `positive(y${at}) / s[0]`
    case 'setting':
      return `s${at}`
    case 'gathered':
      return `g${at}`
  }
}

function text(expression: Expression): string {
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
      return `${expression.form}(${expression.arguments.map(text).join(', ')})`
  }
}
