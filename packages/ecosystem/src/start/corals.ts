import { animals } from '../accounts/index.ts'
import type { Model } from '../assemble/model.ts'
import { coralsOf } from '../processes/coral-uptake.ts'

/** Coral tissue on the first day, with usual stores; a run before the log fills or empties them. */
export function corals(
  model: Model,
  parameters: Float64Array,
  put: (id: string, value: number) => void,
): void {
  for (const { of } of coralsOf(model.system)) {
    const value = (id: string): number =>
      parameters[model.parameters.findIndex(({ fact }) => fact === `coral.${id}`)]
    const mass = value('tissue') * of.area_m2
    const nitrogen = mass * value('growth_n')
    put(`${animals.corals.id}/C`, mass * value('tissue_c'))
    put(`${animals.corals.id}/N`, nitrogen)
    put(`${animals.corals.id}/P`, nitrogen / value('np'))
  }
}
