import { convert } from '@holdfast/quantities'
import { type PH, unIonisedAmmoniaFraction } from '@holdfast/seawater'
import { water } from '../accounts/index.ts'
import { type Model, stateIndex } from '../assemble/model.ts'

/** mg/L of un-ionised ammonia as N, from the total of a state and pH with its scale. */
export function unIonisedAmmonia_mg_N_L(model: Model, states: Float64Array, pH: PH): number {
  const { salinity_psu, temperature_C } = model.system
  const total = (states[stateIndex(model, `${water.ammonia.id}/N`)] ?? 0) / model.volume_L
  return convert(total, 'µmol L⁻¹', 'mg N L⁻¹') * unIonisedAmmoniaFraction(pH, salinity_psu, temperature_C)
}
