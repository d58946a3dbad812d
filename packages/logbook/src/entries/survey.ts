import { standBlanks } from './described.ts'
import { asTyped, kind, name, share, typedTexts } from './kind.ts'
import { inWordsOf, percent, shareTyped } from './says.ts'

/** Share of a surface that a kind of algae covers. */
export const survey = kind({
  name: 'survey',
  title: 'Survey of a surface',
  v: 1,
  body: { surface: name, algae: name, cover: share, text: asTyped, typed: typedTexts },
  blanks: (about) => [
    ...standBlanks(about),
    {
      name: 'cover',
      label: 'Cover',
      holds: 'share',
      required: true,
      hint: 'A share of the surface, such as 12 %',
    },
  ],
  understand: (filled) => ({
    surface: filled.words('surface'),
    algae: filled.words('algae'),
    cover: filled.number('cover'),
    text: filled.typed.cover ?? '',
    typed: filled.typed,
  }),
  fills: ({ surface, algae, cover }) => ({ surface, algae, cover: shareTyped(cover) }),
  says: (body) => inWordsOf(body, `${body.algae} on ${percent(body.cover)} of ${body.surface}`),
})
