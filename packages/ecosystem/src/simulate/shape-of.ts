import { isOfStands } from '../accounts/index.ts'
import type { Flux, Model } from '../assemble/model.ts'
import { type Input, layoutOf } from '../declare/index.ts'
import type { Shape } from '../integrate/index.ts'

/** Amounts below this concentration are all the same to the error control, µmol/L. */
const negligible = 1e-3
/** In a stand, spread over the water: what is left of one grows again, by its own share. */
const negligibleInStand = 1e-5
/** Differences of a cover below this are all the same to it. */
const negligibleCover = 1e-4

/** Sizes, ends and tolerances of a model's equations. */
export function shapeOf(model: Model): Shape {
  const inside = model.states.map((entry) => entry.kind === 'plain' || entry.account.side === 'inside')
  return {
    states: model.states.length,
    ...ends(model.fluxes),
    floored: Uint8Array.from(inside, (is) => (is ? 1 : 0)),
    tolerance: Float64Array.from(model.states, (entry, i) => {
      if (!inside[i]) return 0
      if (entry.kind === 'plain') return negligibleCover
      return (isOfStands(entry.account) ? negligibleInStand : negligible) * model.volume_L
    }),
    ...quickOnes(model),
  }
}

/** What quick processes change or read, and their flows. */
function quickOnes({ states, fluxes, blocks }: Model): {
  readonly quickStates: Uint8Array
  readonly quickFlows: Uint8Array
  readonly exchanges: readonly number[]
} {
  const quickStates = new Uint8Array(states.length)
  const quickFlows = new Uint8Array(fluxes.length)
  for (const { process, compiled, inputs, names, firstFlux } of blocks) {
    if (compiled.slow) continue
    for (let k = firstFlux; k < firstFlux + names.length * compiled.fluxes; k++) {
      quickFlows[k] = 1
      for (const end of [fluxes[k].from, fluxes[k].to]) if (end >= 0) quickStates[end] = 1
    }
    const layout = layoutOf(process)
    for (const [place, index] of inputs.entries())
      if (readsState(layout.inputs[place % layout.inputs.length])) quickStates[index] = 1
  }
  const exchanges = fluxes.flatMap(({ bothWays, from }, k) =>
    bothWays && from >= 0 && quickFlows[k] === 1 ? [k] : [],
  )
  return { quickStates, quickFlows, exchanges }
}

const readsState = (input: Input): boolean =>
  input.from === 'read' && ['amount', 'concentration', 'state'].includes(input.read.read)

/** Where flows begin and end, as flat arrays. */
export const ends = (fluxes: readonly Flux[]): Pick<Shape, 'from' | 'to'> => ({
  from: Int32Array.from(fluxes, ({ from }) => from),
  to: Int32Array.from(fluxes, ({ to }) => to),
})
