import type { FluxLayout, Layout } from '../src/declare/index.ts'
import { differentiate } from './differentiate.ts'
import { pairExpression } from './pair-expression.ts'
import type { Expression } from './parse.ts'
import { madeOf, type ValueGraph } from './value-graph.ts'

/**
 * Code that stores, for each flow that goes both ways between two accounts, how much faster it runs for each µmol
 * more where it begins, and how much slower for each µmol more where it ends; none where no flow does.
 */
export function pullsOf({ inputs, fluxes }: Layout, graph: ValueGraph): readonly string[] {
  const exchanges = fluxes.flatMap((flux, k) =>
    flux.bothWays && flux.from ? [{ ...flux, rate: graph.fluxes[k] }] : [],
  )
  if (exchanges.length === 0) return []
  const used = madeOf(exchanges.map(({ rate }) => rate))
  const { steps, of } = differentiate(graph.values.filter((value) => used.has(value)))
  const inputOf = (account: FluxLayout['from'], atom: FluxLayout['atom']): number =>
    inputs.findIndex(
      (input) =>
        input.from === 'read' &&
        'account' in input.read &&
        input.read.account === account &&
        input.read.atom === atom,
    )
  const pulls = exchanges.flatMap(({ rate, atom, from, to }): readonly (Expression | undefined)[] => {
    const back = of(rate, inputOf(to, atom))
    return [of(rate, inputOf(from, atom)), back && { type: 'negative', of: back }]
  })
  return [
    ...steps.map(({ name, is }) => `const ${name} = ${pairExpression(is)}`),
    ...pulls.map(
      (pull, n) =>
        `v128.store(pulls, ${pull ? `F.positive(${pairExpression(pull)})` : 'both(0)'}, ${16 * n})`,
    ),
    `pulls += ${16 * pulls.length}`,
  ]
}
