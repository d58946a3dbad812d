import type { Flux, Model } from '../assemble/model.ts'
import type { Shape } from '../integrate/index.ts'

/** Amounts below this concentration are all the same to the error control, µmol/L. */
const negligible = 1e-3
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
      return entry.kind === 'plain' ? negligibleCover : negligible * model.volume_L
    }),
  }
}

/** Where flows begin and end, as flat arrays. */
export const ends = (fluxes: readonly Flux[]): Pick<Shape, 'from' | 'to'> => ({
  from: Int32Array.from(fluxes, ({ from }) => from),
  to: Int32Array.from(fluxes, ({ to }) => to),
})
