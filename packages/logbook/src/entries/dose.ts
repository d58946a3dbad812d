import type { DosedSubstance } from '@holdfast/ecosystem'

import { asTyped, kind, positive } from './kind.ts'
import { z } from './schema.ts'

const substances = [
  'ammonium chloride',
  'sodium nitrate',
  'potassium nitrate',
  'monopotassium phosphate',
  'disodium phosphate',
] as const satisfies readonly DosedSubstance[]

/** A salt of N or P dosed at once; `mass_g` is of the pure salt. */
export const dose = kind({
  name: 'dose',
  title: 'Dose',
  v: 1,
  body: { substance: z.enum(substances), mass_g: positive, text: asTyped },
})
