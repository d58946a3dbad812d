import type { System } from '@holdfast/ecosystem'
import { type CoralBand as BandFacts, coralBand, coralBands, source } from '@holdfast/facts'
import type { CoralBand } from './answers.ts'

/** The band of the corals that the system keeps; a kind the catalogue does not know gets that of a mixed reef. */
export function wantedBands(system: System): readonly CoralBand[] {
  const found = (system.corals && coralBand(system.corals.kind)) ?? coralBands()[0]
  return found ? [bandOf(found, 'nitrate'), bandOf(found, 'phosphate')] : []
}

function bandOf(found: BandFacts, quantity: CoralBand['quantity']): CoralBand {
  const { low, high } = quantity === 'nitrate' ? found.NO3_mg_L : found.PO4_mg_L
  const { authors, year, title } = source(found.source)
  return {
    quantity,
    low,
    high,
    fact: {
      id: `coral-band.${found.key}.${quantity}`,
      name: 'where corals want it',
      title: `${found.title}: ${quantity}`,
      low,
      typical: (low + high) / 2,
      high,
      unit: quantity === 'nitrate' ? 'mg/L NO3' : 'mg/L PO4',
      source: [authors, year, title].filter(Boolean).join(', '),
      provenance: found.provenance,
    },
  }
}
