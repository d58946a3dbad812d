import { taxaOf, vesselsOf } from './described.ts'
import { asTyped, count, kind, name, typedTexts } from './kind.ts'
import { inWordsOf } from './says.ts'

/** Animals that went from one vessel of the system to another. */
export const animalsMoved = kind({
  name: 'animals-moved',
  title: 'Animals moved',
  v: 1,
  body: { taxon: name, count, to: name, text: asTyped, typed: typedTexts },
  blanks: (about) => [
    { name: 'taxon', label: 'Animal', required: true, hint: 'Such as Trochus histrio', ...taxaOf(about) },
    { name: 'count', label: 'How many', holds: 'count', required: true, hint: 'A whole number, such as 3' },
    {
      name: 'to',
      label: 'Moved to',
      required: true,
      hint: 'The vessel that they are in now',
      ...vesselsOf(about),
    },
  ],
  understand: (filled) => ({
    taxon: filled.words('taxon'),
    count: filled.number('count'),
    to: filled.words('to'),
    text: filled.typed.count ?? '',
    typed: filled.typed,
  }),
  fills: ({ taxon, count, to }) => ({ taxon, count: String(count), to }),
  says: (body) => inWordsOf(body, `${body.count} ${body.taxon} moved to ${body.to}`),
})
