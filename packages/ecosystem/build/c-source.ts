import type { Block, Model } from '../src/assemble/model.ts'
import { type Input, type Layout, layoutOf } from '../src/declare/index.ts'
import { ends, type Moment, shapeOf, type Values } from '../src/simulate/index.ts'
import { cExpression, cIdentifier } from './c-expression.ts'
import { neededNames, termsAmong } from './names.ts'
import { type Expression, parse } from './parse.ts'

/** How C finds the k-th input of an instance. */
function inputText(input: Input, k: number): string {
  const at = `ix[o + ${k}]`
  if (input.from === 'parameter') return `p[${at}]`
  switch (input.read.read) {
    case 'amount':
    case 'state':
      return `positive(y[${at}])`
    case 'concentration':
      return `positive(y[${at}]) / s[0]`
    case 'setting':
      return `s[${at}]`
    case 'gathered':
      return `g[${at}]`
  }
}

const nameOf = (id: string): string => id.replaceAll(/[^a-z0-9]/g, '_')

/** A run of one member as solvers of others get it. */
export interface ExportedRun {
  readonly parameters: Float64Array
  readonly start: Float64Array
  readonly timeline: readonly Moment[]
  readonly samples: readonly number[]
  readonly to: number
}

/**
 * The equations of a model in C, written from the same declarations as the kernel, for comparison with
 * solvers of others: functions `sums_all`, `rates_all` and `event`, and the run's numbers as arrays.
 * The forms are expected in C by the same names.
 */
export function cSource(model: Model, run: ExportedRun): string {
  const { states, fluxes, eventFluxes, blocks } = model
  const events = [...model.events.values()]
  const { tolerance, floored } = shapeOf(model)
  const lines = [
    ...[...blocks, ...events].flatMap(functionsOf),
    `enum { STATES = ${states.length}, FLUXES = ${fluxes.length}, EVENT_FLUXES = ${eventFluxes.length}, SETTINGS = ${model.settings.ids.length}, GATHERED = ${Math.max(1, model.gathered)} };`,
    doubles('start_values', run.start),
    doubles('parameters', run.parameters),
    doubles('setting_values', model.settings.values),
    doubles('tolerances', tolerance),
    ints('floored', floored),
    ints('flux_from', ends(fluxes).from),
    ints('flux_to', ends(fluxes).to),
    ints('event_from', ends(eventFluxes).from),
    ints('event_to', ends(eventFluxes).to),
    doubles('sample_days', Float64Array.from(run.samples)),
    `enum { SAMPLES = ${run.samples.length} };`,
    `static const double last_day = ${run.to};`,
    'static void sums_all(const double* y, const double* s, double* g) {',
    '  for (int k = 0; k < GATHERED; k++) g[k] = 0;',
    ...blocks
      .filter(({ compiled }) => compiled.sums > 0)
      .map(
        ({ process, names, compiled }) =>
          `  for (int n = 0; n < ${names.length}; n++) gather_${nameOf(process.id)}(y, s, parameters, g, inputs_${nameOf(process.id)}, n * ${layoutOf(process).inputs.length}, gathers_${nameOf(process.id)}, n * ${compiled.sums});`,
      ),
    '}',
    'static void rates_all(const double* y, const double* s, double* g, double* out) {',
    '  sums_all(y, s, g);',
    ...blocks.map((block) => `  ${callOf(block)}`),
    '}',
    'static void event(int which, const double* y, const double* s, double* g, double* out) {',
    '  sums_all(y, s, g);',
    '  switch (which) {',
    ...events.map((block, index) => `    case ${index}: ${callOf(block)} break;`),
    '  }',
    '}',
    ...timelineOf(orderedMoments(model, run.timeline)),
  ]
  return `${lines.join('\n')}\n`
}

const callOf = ({ process, names, compiled, firstFlux }: Block): string =>
  `for (int n = 0; n < ${names.length}; n++) rates_${nameOf(process.id)}(y, s, parameters, g, inputs_${nameOf(process.id)}, n * ${layoutOf(process).inputs.length}, out, ${firstFlux} + n * ${compiled.fluxes});`

function functionsOf(block: Block): readonly string[] {
  const layout = layoutOf(block.process)
  const name = nameOf(block.process.id)
  const gathers = layout.gathers.map(({ sum }) => parse(sum))
  const head = 'const double* y, const double* s, const double* p, double* g, const int* ix, int o,'
  return [
    ints(`inputs_${name}`, block.inputs),
    ints(`gathers_${name}`, block.gathers),
    ...(gathers.length > 0
      ? [
          `static void gather_${name}(${head} const int* gx, int gf) {`,
          ...bodyOf(layout, gathers, (k, code) => `g[gx[gf + ${k}]] += ${code};`),
          '}',
        ]
      : []),
    `static void rates_${name}(${head} double* out, int f) {`,
    ...bodyOf(
      layout,
      layout.fluxes.map(({ rate }) => parse(rate)),
      (k, code) => `out[f + ${k}] = ${code};`,
    ),
    '}',
  ]
}

function bodyOf(
  layout: Layout,
  results: readonly Expression[],
  put: (k: number, code: string) => string,
): readonly string[] {
  const needed = neededNames(layout, results)
  return [
    ...layout.inputs.flatMap((input, k) =>
      needed.has(input.name) ? [`  const double ${cIdentifier(input.name)} = ${inputText(input, k)};`] : [],
    ),
    ...termsAmong(layout, needed).map(
      ({ name, is }) => `  const double ${cIdentifier(name)} = ${cExpression(parse(is))};`,
    ),
    ...results.map((expression, k) => `  ${put(k, cExpression(expression))}`),
  ]
}

/** How a moment changes settings, by the sign the driver knows it by. */
function changeOf(moment: Moment): readonly ['=' | '+' | '*', Values] {
  if ('happens' in moment) return ['=', moment.with]
  if ('set' in moment) return ['=', moment.set]
  return 'add' in moment ? ['+', moment.add] : ['*', moment.multiply]
}

/** A moment as programs of others read it: day, which event (-1 for a lasting change), changes of settings. */
export interface ExportedMoment {
  readonly day: number
  readonly event: number
  readonly changes: readonly (readonly [slot: number, sign: '=' | '+' | '*', value: number])[]
}

/** The moments of a run, settings and events by their places in the model. */
export function orderedMoments(model: Model, moments: readonly Moment[]): readonly ExportedMoment[] {
  const events = [...model.events.keys()]
  return moments.map((moment) => {
    const [sign, values] = changeOf(moment)
    return {
      day: moment.day,
      event: 'happens' in moment ? events.indexOf(moment.happens) : -1,
      changes: Object.entries(values).flatMap(([id, value]) => {
        const slot = model.settings.ids.indexOf(id)
        return slot < 0 ? [] : [[slot, sign, value] as const]
      }),
    }
  })
}

/** Moments as rows, and their changes as rows after each other. */
function timelineOf(moments: readonly ExportedMoment[]): readonly string[] {
  const changes = moments.flatMap((moment) => moment.changes)
  let first = 0
  const rows = moments.map(({ day, event, changes: own }) => {
    first += own.length
    return `{${day}, ${event}, ${first - own.length}, ${own.length}}`
  })
  return [
    'typedef struct { int slot; char sign; double value; } change;',
    'typedef struct { double day; int event, first, count; } moment;',
    `static const change changes[] = {${[...changes.map(([slot, sign, value]) => `{${slot}, '${sign}', ${value}}`), "{0, '=', 0}"].join(', ')}};`,
    `static const moment moments[] = {${[...rows, '{0, 0, 0, 0}'].join(', ')}};`,
    `enum { MOMENTS = ${rows.length} };`,
  ]
}

const ints = (name: string, values: ArrayLike<number>): string =>
  `static const int ${name}[] = {${[...Array.from(values), 0].join(', ')}};`
const doubles = (name: string, values: ArrayLike<number>): string =>
  `static const double ${name}[] = {${[...Array.from(values), 0].join(', ')}};`
