import { equationsOf, type Model, stateIndex } from '@holdfast/ecosystem'

/**
 * How much ferric media still take, as a share of what the same mass of fresh media would take of the same water,
 * 0 to 1; 0 too where not even fresh media would take any.
 */
export function mediumLeft(model: Model, parameters: Float64Array, settings: Float64Array) {
  const held = stateIndex(model, 'media.ferric/P')
  const flux = model.fluxes.findIndex(({ process, to }) => process.id === 'ferric-media' && to === held)
  const rates = new Float64Array(model.fluxes.length)
  const equations = equationsOf(model, parameters, settings)
  const uptake = (states: Float64Array): number => {
    equations.rates(states, rates)
    return rates[flux] ?? 0
  }
  return (states: Float64Array): number => {
    const fresh = Float64Array.from(states)
    fresh[held] = 0
    const most = uptake(fresh)
    return most > 0 ? uptake(states) / most : 0
  }
}
