import type { Flux, Model } from '../assemble/model.ts'
import type { Equations } from '../integrate/index.ts'

/** Amounts below this concentration are all the same to the error control, µmol/L. */
const negligible = 1e-3
/** Differences of a cover below this are all the same to it. */
const negligibleCover = 1e-4

/** Binds a model to one set of parameters and to settings that events may change on the way. */
export function equationsOf(model: Model, parameters: Float64Array, settings: Float64Array): Equations {
  const gathered = new Float64Array(model.gathered)
  const { blocks } = model
  const gathering = blocks.filter(({ compiled }) => compiled.gather !== null)
  const inside = model.states.map((entry) => entry.kind === 'plain' || entry.account.side === 'inside')
  return {
    states: model.states.length,
    fluxes: model.fluxes.length,
    ...ends(model.fluxes),
    floored: Uint8Array.from(inside, (is) => (is ? 1 : 0)),
    tolerance: Float64Array.from(model.states, (entry, i) => {
      if (!inside[i]) return 0
      return entry.kind === 'plain' ? negligibleCover : negligible * model.volume_L
    }),
    rates: (y, out) => {
      gathered.fill(0)
      for (const { compiled, inputs, gathers, names } of gathering) {
        for (let n = 0; n < names.length; n++)
          compiled.gather?.(
            y,
            settings,
            parameters,
            gathered,
            inputs,
            n * compiled.inputs,
            gathers,
            n * compiled.gathers,
          )
      }
      for (const { compiled, inputs, names, firstFlux } of blocks) {
        for (let n = 0; n < names.length; n++)
          compiled.rates(
            y,
            settings,
            parameters,
            gathered,
            inputs,
            n * compiled.inputs,
            out,
            firstFlux + n * compiled.fluxes,
          )
      }
    },
  }
}

/** Where flows begin and end, as flat arrays. */
export const ends = (fluxes: readonly Flux[]): Pick<Equations, 'from' | 'to'> => ({
  from: Int32Array.from(fluxes, ({ from }) => from),
  to: Int32Array.from(fluxes, ({ to }) => to),
})
