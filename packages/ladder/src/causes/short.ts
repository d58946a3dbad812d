import { pieceOf, type Standing } from '../standing.ts'
import type { Nutrient } from '../water-today.ts'
import { amount, type Found } from './found.ts'

const raises: Readonly<Record<Nutrient, string>> = {
  nitrate: 'nitrate_dose_small',
  phosphate: 'phosphate_dose_small',
}

/** Nitrate, phosphate or both at nothing: corals starve, and slime takes the ground. */
export function short(standing: Standing): Found | undefined {
  const { levels, medium, system, hasAnimals } = standing
  const lacking = (['nitrate', 'phosphate'] as const).filter((of) => levels[of].isShort)
  if (lacking.length === 0 || !(system.corals || hasAnimals)) return undefined
  const takesPhosphate = lacking.includes('phosphate') && medium !== undefined
  const dosed = pieceOf(standing, 'organic carbon dosing') !== undefined
  const both = lacking.length === 2
  const why = [
    ...(takesPhosphate ? ['ferric media take it'] : []),
    ...(dosed ? ['bacteria on the carbon dose take it'] : []),
  ]
  return {
    key: 'short',
    rank: 'short',
    size: 1,
    says: `${both ? 'Nitrate and phosphate read' : `${lacking[0] === 'nitrate' ? 'Nitrate' : 'Phosphate'} reads`} nothing, or nearly (${lacking.map((of) => `at most ${amount(levels[of].value)}`).join(', ')})${why.length > 0 ? `: ${why.join(' and ')}` : ''}. Corals and wanted bacteria lack it; taking more out does harm.`,
    steps: [
      ...(takesPhosphate ? ['ferric_media_less'] : []),
      ...(dosed ? ['carbon_dose_less'] : []),
      'feed_more',
      ...(both ? ['nutrients_raise'] : lacking.map((of) => raises[of])),
      ...(dosed ? ['carbon_dose_more'] : []),
    ],
  }
}
