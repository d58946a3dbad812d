import { choicesOf } from './blank.ts'
import { asTyped, kind, positive, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
import { z } from './schema.ts'

const places = ['refugium', 'turf scrubber'] as const

/** Algae grown for export and taken out; `wet_g` as it was weighed after it had drained. */
export const harvest = kind({
  name: 'harvest',
  title: 'Harvest',
  v: 1,
  body: { from: z.enum(places), wet_g: positive, text: asTyped, typed: typedTexts },
  blanks: () => [
    {
      name: 'from',
      label: 'Harvested from',
      holds: 'choice',
      required: true,
      hint: 'Where the algae grew',
      choices: choicesOf(places),
    },
    {
      name: 'mass',
      label: 'Wet mass',
      holds: 'mass',
      required: true,
      hint: 'Drained, not dried, such as 250 g',
      above: 0,
    },
  ],
  understand: (filled) => ({
    from: filled.words('from') as (typeof places)[number],
    wet_g: filled.number('mass'),
    text: filled.typed.mass ?? '',
    typed: filled.typed,
  }),
  fills: ({ from, wet_g }) => ({ from, mass: `${wet_g} g` }),
  says: (body) => inWordsOf(body, `Harvest of ${figure(body.wet_g)} g wet algae from the ${body.from}`),
})
