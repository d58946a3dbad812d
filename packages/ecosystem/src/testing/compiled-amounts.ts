import type { Model } from '../assemble/model.ts'

/** What one event would move, by its compiled kernel; before any limit. */
export function compiledAmounts(
  model: Model,
  event: string,
  { y, settings, parameters }: { y: Float64Array; settings: Float64Array; parameters: Float64Array },
): Float64Array {
  const out = new Float64Array(model.eventFluxes.length)
  const block = model.events.get(event)
  if (!block) throw new Error(`The model has no event ${event}.`)
  const { compiled, inputs, names, firstFlux } = block
  const none = new Float64Array(0)
  names.forEach((_, n) => {
    compiled.rates(
      y,
      settings,
      parameters,
      none,
      inputs,
      n * compiled.inputs,
      out,
      firstFlux + n * compiled.fluxes,
    )
  })
  return out
}
