import { fact } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { water } from '../accounts/index.ts'
import { type Model, stateIndex } from '../assemble/model.ts'

const dissolved = [water.labile, water.skimmable, water.resistant]

/** mg C/L of all dissolved organics: what the accounts hold and the background of sea water, which nothing takes. */
export function dissolvedOrganicCarbon_mg_L(model: Model, states: Float64Array): number {
  const held = dissolved.reduce((sum, { id }) => sum + (states[stateIndex(model, `${id}/C`)] ?? 0), 0)
  return convert(held / model.volume_L + fact('min.doc.background').typical, 'µmol L⁻¹', 'mg C L⁻¹')
}
