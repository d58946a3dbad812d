import { asTyped, kind, notNegative, positive, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
import { z } from './schema.ts'

export const waterChange = kind({
  name: 'water-change',
  title: 'Water change',
  v: 1,
  body: {
    volume_L: positive,
    /** The new water, where it is not the system's usual one; mg/L of the ion. */
    water: z.exactOptional(z.object({ NO3_mg_L: notNegative, PO4_mg_L: notNegative })),
    text: asTyped,
    typed: typedTexts,
  },
  blanks: (_, { nitrate = '', phosphate = '' }) => {
    // New water is named as a whole: one of the two alone would leave the other to be guessed.
    const both = nitrate.trim() !== '' || phosphate.trim() !== ''
    return [
      {
        name: 'volume',
        label: 'Volume changed',
        holds: 'volume',
        required: true,
        hint: 'Such as 40 L or 10 US gal',
      },
      {
        name: 'nitrate',
        label: 'Nitrate of the new water',
        holds: 'nitrate',
        required: both,
        hint: 'Only where it is not the usual water, such as 2 mg/L NO3',
      },
      {
        name: 'phosphate',
        label: 'Phosphate of the new water',
        holds: 'phosphate',
        required: both,
        hint: 'Only where it is not the usual water, such as 0.02 mg/L PO4',
      },
    ]
  },
  understand: (filled) => ({
    volume_L: filled.number('volume'),
    ...(filled.has('nitrate') && {
      water: { NO3_mg_L: filled.number('nitrate'), PO4_mg_L: filled.number('phosphate') },
    }),
    text: filled.typed.volume ?? '',
    typed: filled.typed,
  }),
  fills: ({ volume_L, water }) => ({
    volume: `${volume_L} L`,
    ...(water && { nitrate: `${water.NO3_mg_L} mg/L NO3`, phosphate: `${water.PO4_mg_L} mg/L PO4` }),
  }),
  says: (body) => inWordsOf(body, `Water change of ${figure(body.volume_L)} L`),
})
