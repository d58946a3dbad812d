import { standBlanks } from './described.ts'
import { asTyped, kind, name, share, typedTexts } from './kind.ts'
import { inWordsOf, percent, shareTyped } from './says.ts'
import { z } from './schema.ts'

/** Algae plucked or scraped off; what is left to drift stays in the system. */
export const handRemoval = kind({
  name: 'hand-removal',
  title: 'Algae removed by hand',
  v: 1,
  body: { surface: name, algae: name, share, leftToDrift: z.boolean(), text: asTyped, typed: typedTexts },
  blanks: (about) => [
    ...standBlanks(about),
    {
      name: 'share',
      label: 'Share taken off',
      holds: 'share',
      required: true,
      hint: 'Of those algae on that surface, such as 50 %',
    },
    {
      name: 'left',
      label: 'What became of it',
      holds: 'choice',
      required: true,
      hint: 'What drifts stays in the water as waste',
      choices: [
        { value: 'out', words: 'taken out of the water' },
        { value: 'drifting', words: 'left to drift' },
      ],
    },
  ],
  understand: (filled) => ({
    surface: filled.words('surface'),
    algae: filled.words('algae'),
    share: filled.number('share'),
    leftToDrift: filled.words('left') === 'drifting',
    text: filled.typed.share ?? '',
    typed: filled.typed,
  }),
  fills: ({ surface, algae, share, leftToDrift }) => ({
    surface,
    algae,
    share: shareTyped(share),
    left: leftToDrift ? 'drifting' : 'out',
  }),
  says: (body) => {
    const { share, algae, surface, leftToDrift } = body
    const end = leftToDrift ? ', left to drift' : ''
    return inWordsOf(body, `${percent(share)} of ${algae} on ${surface} removed by hand${end}`)
  },
})
