import { convert } from '@holdfast/quantities'
import { bedOfAlgae } from '../accounts/index.ts'
import type { Model } from '../assemble/model.ts'
import { bedsOf } from '../processes/cultivated-beds.ts'

/**
 * Cultivated algae on the first day: of the mass and with the stores that the keeper tells; without a word
 * half full of N and P. How long a bed has been dark the run before the log says.
 */
export function beds(model: Model, parameters: Float64Array, put: (id: string, value: number) => void): void {
  for (const { id, alga, area_m2, item } of bedsOf(model.system)) {
    const of = (what: string): number => {
      const index = model.parameters.findIndex(({ fact }) => fact === `alg.${alga}.${what}`)
      return parameters[index]
    }
    const mass =
      item.kind === 'refugium'
        ? (item.wet_mass_g ?? 0) * (item.dry_fraction ?? of('dw'))
        : model.facts.typical('turf.standing') * area_m2
    const told = item.kind === 'refugium' ? { N: item.N_of_dry, P: item.P_of_dry } : {}
    const store = (atom: 'N' | 'P', least: string, fed: string): number => {
      const fraction = told[atom]
      return fraction === undefined
        ? (of(least) + of(fed)) / 2
        : convert(fraction, `g ${atom} g⁻¹`, 'µmol g⁻¹')
    }
    put(`${bedOfAlgae(id).id}/C`, mass * of('c'))
    put(`${bedOfAlgae(id).id}/N`, mass * store('N', 'n_min', 'n_max'))
    put(`${bedOfAlgae(id).id}/P`, mass * store('P', 'p_min', 'p_max'))
  }
}
