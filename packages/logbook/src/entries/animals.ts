import { taxaOf } from './described.ts'
import { asTyped, count, kind, name, positive, typedTexts } from './kind.ts'
import { inWordsOf } from './says.ts'
import { z } from './schema.ts'

const changes = ['added', 'taken out', 'died', 'missing'] as const
type Change = (typeof changes)[number]

/**
 * Animals that came or went; `mass_g` is of one animal. 'missing' is what nobody saw die; a body that is
 * not taken out stays in the system with what it holds. Version 1 knew 'lost' alone, and not how.
 */
export const animals = kind({
  name: 'animals',
  title: 'Animals in or out',
  v: 2,
  body: {
    change: z.enum(changes),
    taxon: name,
    count,
    mass_g: z.exactOptional(positive),
    /** Of animals that died; left out where nobody knows. */
    bodyTakenOut: z.exactOptional(z.boolean()),
    text: asTyped,
    typed: typedTexts,
  },
  lifts: { 1: (body) => (body.change === 'lost' ? { ...body, change: 'missing' } : body) },
  blanks: (about, { change }) => [
    {
      name: 'change',
      label: 'What happened',
      holds: 'choice',
      required: true,
      hint: 'Added, taken out alive, died, or missing',
      choices: [
        { value: 'added', words: 'added' },
        { value: 'taken out', words: 'taken out alive' },
        { value: 'died', words: 'died' },
        { value: 'missing', words: 'missing, nobody saw how' },
      ],
    },
    { name: 'taxon', label: 'Animal', required: true, hint: 'Such as Trochus histrio', ...taxaOf(about) },
    { name: 'count', label: 'How many', holds: 'count', required: true, hint: 'A whole number, such as 3' },
    {
      name: 'mass',
      label: 'Mass of one',
      holds: 'mass',
      required: false,
      above: 0,
      hint: 'Such as 12 g, where it is known',
    },
    ...(change === 'died' ? [bodyTakenOut] : []),
  ],
  understand: (filled) => ({
    change: filled.words('change') as Change,
    taxon: filled.words('taxon'),
    count: filled.number('count'),
    ...filled.numberAs('mass_g', 'mass'),
    ...(filled.has('body') &&
      filled.words('body') !== 'unknown' && { bodyTakenOut: filled.words('body') === 'yes' }),
    text: filled.typed.count ?? '',
    typed: filled.typed,
  }),
  fills: ({ change, taxon, count, mass_g, bodyTakenOut }) => ({
    change,
    taxon,
    count: String(count),
    ...(mass_g !== undefined && { mass: `${mass_g} g` }),
    ...(change === 'died' && { body: bodyTakenOut === undefined ? 'unknown' : bodyTakenOut ? 'yes' : 'no' }),
  }),
  says: (body) => {
    const { change, taxon, count, bodyTakenOut } = body
    const end = bodyTakenOut === undefined ? '' : bodyTakenOut ? ', taken out' : ', left in the tank'
    return inWordsOf(body, `${count} ${taxon} ${change}${end}`)
  },
})

const bodyTakenOut = {
  name: 'body',
  label: 'Was the body taken out?',
  holds: 'choice',
  required: true,
  hint: 'A body left in the tank feeds the water',
  choices: [
    { value: 'yes', words: 'yes' },
    { value: 'no', words: 'no' },
    { value: 'unknown', words: 'not known' },
  ],
} as const
