import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { stateIndex } from '../assemble/model.ts'
import { spreads } from '../processes/stands.ts'
import { equationsOf } from '../simulate/equations-of.ts'
import { box } from './systems.ts'

/**
 * Growth of a thin lit stand (d⁻¹, before losses) once its stores have settled to water of these
 * concentrations, held for ever. The way to the frond is taken as short: the tables are at the frond.
 */
export function steadyGrowth(kind: string, water: { readonly N: number; readonly P: number }): number {
  const model = assemble({
    ...box,
    surfaces: [
      {
        id: 'plate',
        vessel: 'display',
        kind: 'rock_face',
        area_m2: 1,
        light_umol_m2_s: 1000,
        light_h_per_day: 12,
        age_days: 900,
      },
    ],
    algae: [{ kind, surface: 'plate', cover: 0.1 }],
  })
  const parameters = typicalParameters(model)
  const setFact = (id: string, value: number): void => {
    model.parameters.forEach(({ fact }, k) => {
      if (fact === id) parameters[k] = value
    })
  }
  const of = (id: string): number => parameters[model.parameters.findIndex(({ fact }) => fact === id)]
  setFact('coral.s_nh4', 1e9)
  setFact('coral.s_po4', 1e9)
  // What settles is no growth of the stand.
  setFact('algae.settling_rate', 0)
  const { rates } = equationsOf(model, parameters, model.settings.values)
  const stand = `surface.plate.${kind}.open`
  const stores = `surface.display.${kind}`
  const at = (id: string): number => stateIndex(model, id)
  const y = new Float64Array(model.states.length)
  const mass = 0.1
  // A tenth of a gram on a square metre is a thin stand, of tufts over all of it, of films and crusts over little.
  if (spreads(kind)) y[at(`cover.plate.${kind}.open`)] = 1
  y[at(`${stand}/C`)] = mass * of(`algae.${kind}.tissue_C`)
  y[at(`${stores}/N`)] = mass * of(`algae.${kind}.quota_N_max`)
  y[at(`${stores}/P`)] = mass * of(`algae.${kind}.quota_P_max`)
  if (at('water.silicate/Si') >= 0) y[at('water.silicate/Si')] = 1000 * model.volume_L
  y[at('water.nitrate/N')] = water.N * model.volume_L
  y[at('water.phosphate/P')] = water.P * model.volume_L
  const out = new Float64Array(model.fluxes.length)
  const inflow = (id: string): number => {
    const index = at(id)
    return model.fluxes.reduce(
      (sum, flux, k) =>
        /^algal-(growth|uptake)/.test(flux.process.id) && flux.to === index ? sum + out[k] : sum,
      0,
    )
  }
  let growth = 0
  // Stores settle within some doublings; a step is short against the fastest uptake, which goes with growth.
  const step_days = 0.05 / of(`algae.${kind}.growth`)
  for (let step = 0; step < 400; step++) {
    rates(y, out)
    growth = inflow(`${stand}/C`) / y[at(`${stand}/C`)]
    for (const atom of ['N', 'P']) {
      const id = `${stores}/${atom}`
      y[at(id)] += step_days * (inflow(id) - growth * y[at(id)])
    }
  }
  return growth
}
