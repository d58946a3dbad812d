import { convert } from '@holdfast/quantities'
import { water } from '../accounts/index.ts'
import { type Model, stateIndex } from '../assemble/model.ts'

const dissolved = [water.labile, water.skimmable, water.resistant]

/** What is held to be in the water beyond all accounts. */
export const factsOfOrganics = { background: 'min.doc.background' } as const

/** mg C/L of all dissolved organics: what the accounts hold and the background of sea water, which nothing takes. */
export function dissolvedOrganicCarbon_mg_L(model: Model, states: Float64Array): number {
  const held = dissolved.reduce((sum, { id }) => sum + (states[stateIndex(model, `${id}/C`)] ?? 0), 0)
  return convert(
    held / model.volume_L + model.facts.typical(factsOfOrganics.background),
    'µmol L⁻¹',
    'mg C L⁻¹',
  )
}
