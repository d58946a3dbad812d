import { asTyped, kind, positive, typedTexts } from './kind.ts'
import { figure, inWordsOf } from './says.ts'
import { z } from './schema.ts'

/** Phosphate media; `mass_g` is dry. Old media removed and new placed at once is 'replaced'. */
export const media = kind({
  name: 'media',
  title: 'Phosphate media',
  v: 1,
  body: {
    action: z.enum(['placed', 'removed', 'replaced']),
    mass_g: z.exactOptional(positive),
    text: asTyped,
    typed: typedTexts,
  },
  blanks: (_, { action }) => [
    {
      name: 'action',
      label: 'What was done',
      holds: 'choice',
      required: true,
      hint: 'Placed, removed, or old replaced by new',
      choices: [
        { value: 'placed', words: 'placed' },
        { value: 'replaced', words: 'old replaced by new' },
        { value: 'removed', words: 'removed' },
      ],
    },
    ...(action === 'removed' ? [] : [mass]),
  ],
  understand: (filled) => ({
    action: filled.words('action') as 'placed' | 'removed' | 'replaced',
    ...filled.numberAs('mass_g', 'mass'),
    text: filled.typed.mass ?? '',
    typed: filled.typed,
  }),
  fills: ({ action, mass_g }) => ({ action, ...(mass_g !== undefined && { mass: `${mass_g} g` }) }),
  says: (body) => {
    const { action, mass_g } = body
    return inWordsOf(body, `Phosphate media ${action}${mass_g === undefined ? '' : `, ${figure(mass_g)} g`}`)
  },
})

const mass = {
  name: 'mass',
  label: 'Dry mass',
  holds: 'mass',
  required: false,
  above: 0,
  hint: 'Such as 200 g; without it the model cannot take the media',
} as const
