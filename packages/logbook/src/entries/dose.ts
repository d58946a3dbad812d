import type { DosedSubstance } from '@holdfast/ecosystem'

import { choicesOf } from './blank.ts'
import { asTyped, kind, positive, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
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
  body: { substance: z.enum(substances), mass_g: positive, text: asTyped, typed: typedTexts },
  blanks: () => [
    {
      name: 'substance',
      label: 'Salt',
      holds: 'choice',
      required: true,
      hint: 'The pure salt that was dosed',
      choices: choicesOf(substances),
    },
    {
      name: 'mass',
      label: 'Mass of the pure salt',
      holds: 'mass',
      required: true,
      hint: 'Such as 2 g',
      above: 0,
    },
  ],
  understand: (filled) => ({
    substance: filled.words('substance') as DosedSubstance,
    mass_g: filled.number('mass'),
    text: filled.typed.mass ?? '',
    typed: filled.typed,
  }),
  fills: ({ substance, mass_g }) => ({ substance, mass: `${mass_g} g` }),
  says: (body) => inWordsOf(body, `Dose of ${figure(body.mass_g)} g ${body.substance}`),
})
