import type { Block, Model } from '../src/assemble/model.ts'
import { type Input, layoutOf } from '../src/declare/index.ts'
import { cExpression } from './c-expression.ts'
import { asExpression, differentiate } from './differentiate.ts'
import type { Expression } from './parse.ts'
import { madeOf, type Value, valueGraph } from './value-graph.ts'

/**
 * The equations of a model in C a second time, as a solver wants them that is to be quick: what parameters and
 * settings alone give is worked out by `prepare_all` whenever a setting changes, what two formulas share once;
 * and their exact derivatives by `jacobian_all`. Expects what `cSource` writes.
 *
 * Derivatives are listed flow by flow: `direct_flux` and `direct_state` say of which flow by which state,
 * `gathered_flux` and `gathered_slot` of which flow by which sum, `sum_slot` and `sum_state` of which sum by
 * which state, `inner_slot` and `inner_by` of which sum by which sum that is made before it.
 */
export function cJacobian(model: Model): string {
  const written = model.blocks.map(blockSource)
  const calls = (of: (block: Written) => string): string => written.map(of).join('\n')
  const sum = (count: (block: Written) => number): number =>
    Math.max(
      1,
      written.reduce((all, block) => all + count(block), 0),
    )
  return `${calls(({ functions }) => functions)}
static double fixed_values[${sum(({ fixed, instances }) => fixed * instances)}];
${ints(
  'direct_flux',
  written.flatMap(({ direct }) => direct.map(({ flux }) => flux)),
)}
${ints(
  'direct_state',
  written.flatMap(({ direct }) => direct.map(({ by }) => by)),
)}
${ints(
  'gathered_flux',
  written.flatMap(({ gathered }) => gathered.map(({ flux }) => flux)),
)}
${ints(
  'gathered_slot',
  written.flatMap(({ gathered }) => gathered.map(({ by }) => by)),
)}
${ints(
  'sum_slot',
  written.flatMap(({ sums }) => sums.map(({ flux }) => flux)),
)}
${ints(
  'sum_state',
  written.flatMap(({ sums }) => sums.map(({ by }) => by)),
)}
${ints(
  'inner_slot',
  written.flatMap(({ inner }) => inner.map(({ flux }) => flux)),
)}
${ints(
  'inner_by',
  written.flatMap(({ inner }) => inner.map(({ by }) => by)),
)}
enum { DIRECT = ${written.flatMap(({ direct }) => direct).length}, BY_SUM = ${written.flatMap(({ gathered }) => gathered).length}, SUMS = ${written.flatMap(({ sums }) => sums).length}, INNER = ${written.flatMap(({ inner }) => inner).length} };
static void prepare_all(const double* s) {
  double* h = fixed_values;
${calls(({ name, instances, inputs, fixed }) => `  for (int n = 0; n < ${instances}; n++, h += ${fixed}) prepare_${name}(s, inputs_${name} + n * ${inputs}, h);`)}
}
static void rates_quick(const double* y, const double* s, double* g, double* out) {
  for (int k = 0; k < GATHERED; k++) g[k] = 0;
  const double* h = fixed_values;
${calls(({ name, instances, inputs, fixed, gathers }) => `  for (int n = 0; n < ${instances}; n++) quick_gather_${name}(y, s, inputs_${name} + n * ${inputs}, h + n * ${fixed}, g, gathers_${name} + n * ${gathers}); h += ${instances * fixed};`)}
  h = fixed_values;
${calls(({ name, instances, inputs, fixed, fluxes, firstFlux }) => `  for (int n = 0; n < ${instances}; n++, h += ${fixed}) quick_rates_${name}(y, s, inputs_${name} + n * ${inputs}, h, g, out + ${firstFlux} + n * ${fluxes});`)}
}
/* After rates_quick at the same states: its sums are used. */
static void jacobian_all(const double* y, const double* s, const double* g, double* direct, double* by_sum, double* sums, double* inner) {
  const double* h = fixed_values;
${calls(({ name, instances, inputs, fixed }) => `  for (int n = 0; n < ${instances}; n++, h += ${fixed}) jacobian_${name}(y, s, inputs_${name} + n * ${inputs}, h, g, &direct, &by_sum, &sums, &inner);`)}
}
`
}

/** Of which flow or sum by which state or sum. */
interface Entry {
  readonly flux: number
  readonly by: number
}

interface Written {
  readonly name: string
  readonly functions: string
  readonly instances: number
  readonly inputs: number
  readonly fixed: number
  readonly gathers: number
  readonly fluxes: number
  readonly firstFlux: number
  readonly direct: readonly Entry[]
  readonly gathered: readonly Entry[]
  readonly sums: readonly Entry[]
  readonly inner: readonly Entry[]
}

function blockSource({ process, names, inputs, gathers, firstFlux }: Block): Written {
  const layout = layoutOf(process)
  const graph = valueGraph(layout)
  const name = process.id.replaceAll(/[^a-z0-9]/g, '_')
  const roots = [...graph.gathers, ...graph.fluxes]
  const used = madeOf(roots)
  const plain = (value: Value): boolean => value.type === 'number' || value.type === 'found'
  // What is fixed and asked for by something live, or is asked for itself.
  const kept = graph.values.filter(
    (value) =>
      used.has(value) &&
      !value.live &&
      !plain(value) &&
      (roots.includes(value) ||
        graph.values.some((other) => other.live && used.has(other) && other.of.includes(value))),
  )
  const place = new Map(kept.map((value, k) => [value, k]))
  const put = (value: Value): string => `  const double ${value.name} = ${code(value, layout.inputs)};`
  const lines = (wanted: readonly Value[], live: boolean): readonly string[] => {
    const needed = madeOf(wanted, (value) => live && place.has(value))
    return graph.values.flatMap((value) => {
      if (!needed.has(value) || value.type === 'number') return []
      const at = live ? place.get(value) : undefined
      return [at === undefined ? put(value) : `  const double ${value.name} = h[${at}];`]
    })
  }
  const derivatives = differentiate(graph.values.filter((value) => used.has(value)))
  const isSum = (k: number): boolean => {
    const input = layout.inputs[k]
    return input.from === 'read' && input.read.read === 'gathered'
  }
  const byStates = (value: Value) => derivatives.inputs(value).filter((k) => !isSum(k))
  const bySums = (value: Value) => derivatives.inputs(value).filter(isSum)
  const entries = (values: readonly Value[], by: (value: Value) => readonly number[]) =>
    values.flatMap((value, k) => by(value).map((input) => ({ k, input, value })))
  const direct = entries(graph.fluxes, byStates)
  const gathered = entries(graph.fluxes, bySums)
  const sums = entries(graph.gathers, byStates)
  const inner = entries(graph.gathers, bySums)
  const results = (into: string, list: typeof direct): readonly string[] =>
    list.map(({ value, input }) => {
      const is = derivatives.of(value, input)
      return `  *(*${into})++ = ${is ? text(is) : '0'};`
    })
  const head = 'const double* y, const double* s, const int* ix, const double* h,'
  const functions = [
    `static inline void prepare_${name}(const double* s, const int* ix, double* h) {`,
    ...lines(kept, false),
    ...kept.map((value, k) => `  h[${k}] = ${value.name};`),
    '}',
    `static inline void quick_gather_${name}(${head} double* g, const int* gx) {`,
    ...lines(graph.gathers, true),
    ...graph.gathers.map((value, k) => `  g[gx[${k}]] += ${text(asExpression(value))};`),
    '}',
    `static inline void quick_rates_${name}(${head} const double* g, double* out) {`,
    ...lines(graph.fluxes, true),
    ...graph.fluxes.map((value, k) => `  out[${k}] = ${text(asExpression(value))};`),
    '}',
    `static inline void jacobian_${name}(${head} const double* g, double** direct, double** by_sum, double** sums, double** inner) {`,
    ...lines(roots, true),
    ...derivatives.steps.map(({ name: step, is }) => `  const double ${step} = ${text(is)};`),
    ...results('direct', direct),
    ...results('by_sum', gathered),
    ...results('sums', sums),
    ...results('inner', inner),
    '}',
  ].join('\n')
  const each = <T>(make: (n: number) => readonly T[]): readonly T[] => names.flatMap((_, n) => make(n))
  const at = (n: number, input: number): number => inputs[n * layout.inputs.length + input]
  const ofFlux = (list: typeof direct) =>
    each((n) =>
      list.map(({ k, input }) => ({ flux: firstFlux + n * graph.fluxes.length + k, by: at(n, input) })),
    )
  const ofSum = (list: typeof direct) =>
    each((n) =>
      list.map(({ k, input }) => ({ flux: gathers[n * graph.gathers.length + k], by: at(n, input) })),
    )
  return {
    name,
    functions,
    instances: names.length,
    inputs: layout.inputs.length,
    fixed: kept.length,
    gathers: graph.gathers.length,
    fluxes: graph.fluxes.length,
    firstFlux,
    direct: ofFlux(direct),
    gathered: ofFlux(gathered),
    sums: ofSum(sums),
    inner: ofSum(inner),
  }
}

const text = (expression: Expression): string => cExpression(expression, (name) => name)

/** A value in C, of the values that it is made of. */
function code(value: Value, inputs: readonly Input[]): string {
  const [left, right] = value.of.map((inner) => text(asExpression(inner)))
  switch (value.type) {
    case 'number':
      return text(asExpression(value))
    case 'found':
      return value.found === 'volume'
        ? 's[0]'
        : `${vectorOf(inputs[value.found.input])}[ix[${value.found.input}]]`
    case 'negative':
      return `-${left}`
    case 'operation':
      return `${left} ${value.operator} ${right}`
    case 'form':
      return `${value.form}(${value.of.map((inner) => text(asExpression(inner))).join(', ')})`
  }
}

function vectorOf(input: Input): string {
  if (input.from === 'parameter') return 'parameters'
  switch (input.read.read) {
    case 'setting':
      return 's'
    case 'gathered':
      return 'g'
    default:
      return 'y'
  }
}

const ints = (name: string, values: readonly number[]): string =>
  `static const int ${name}[] = {${[...values, 0].join(', ')}};`
