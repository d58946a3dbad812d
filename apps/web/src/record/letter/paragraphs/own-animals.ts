import { algaeKind, algaeKinds, type Grazer, grazer, grazers, taste } from '@holdfast/facts'
import type { Choice } from '../blank.ts'
import { body, dryFood, size, tankLength, temperature, volume } from '../holds.ts'
import type { Letter, More, Sentence } from '../paragraph.ts'

type Own = NonNullable<Letter['own animals']>[number]

/** The grazers of the catalogue, as a blank offers them. */
export const crew: readonly Choice[] = grazers().map(({ taxon, tradeName }) => ({
  value: taxon,
  words: `${tradeName} (${taxon})`,
}))

/** What may be told of one beside whom it is like; it begins as with that one. */
const told = [
  {
    key: 'adult size',
    before: 'A grown one is ',
    after: ' long.',
    holds: size,
    start: ({ adultSize_cm }: Grazer) => `${adultSize_cm} cm`,
    words: 'size',
  },
  {
    key: 'mass',
    before: 'A grown one weighs ',
    after: '.',
    holds: body,
    start: ({ wetMass_g }: Grazer) => `${wetMass_g} g`,
    words: 'mass',
  },
  {
    key: 'least glass',
    before: 'It needs a tank of ',
    after: ' at least.',
    holds: volume,
    start: ({ volume_L }: Grazer) => `${volume_L.least} L`,
    words: 'least tank',
  },
  {
    key: 'least length',
    before: 'Its tank is at least ',
    after: ' long.',
    holds: tankLength,
    start: () => '100 cm',
    words: 'least length of tank',
  },
  {
    key: 'warmest',
    before: 'It lives in water of ',
    after: ' at most.',
    holds: temperature,
    start: ({ temperature_C }: Grazer) => `${temperature_C.max} °C`,
    words: 'warmest water',
  },
  {
    key: 'eats',
    before: 'Hungry, one eats ',
    after: ' of algae, weighed dry.',
    holds: dryFood,
    start: ({ consumption }: Grazer) => `${consumption.typical} g dry/d`,
    words: 'appetite',
  },
] as const

const listName = 'own animals'

/** Animals that the catalogue does not have: whom each is like, and what is different. */
export const ownAnimals = (own: readonly Own[]): readonly Sentence[] =>
  own.flatMap((one, i) => [
    {
      key: `own ${i}`,
      pieces: [
        'An animal of my own, ',
        { path: [listName, i, 'taxon'], label: 'Name of your own animal', holds: 'words' },
        ', lives like a ',
        { path: [listName, i, 'like'], label: `Animal that ${one.taxon} is like`, holds: crew },
        '.',
      ],
      removes: { path: [listName, i], words: 'No such animal' },
    } satisfies Sentence,
    ...told
      .filter(({ key }) => one[key] !== undefined)
      .map(
        ({ key, before, after, holds, words }): Sentence => ({
          key: `own ${i} ${key}`,
          pieces: [before, { path: [listName, i, key], label: `${one.taxon}: ${words}`, holds }, after],
          removes: { path: [listName, i, key], words: `As the one it is like` },
        }),
      ),
    ...Object.keys(one.tastes ?? {}).map(
      (kind): Sentence => ({
        key: `own ${i} tastes ${kind}`,
        pieces: [
          `With only ${nameOf(kind)} to eat it takes `,
          {
            path: [listName, i, 'tastes', kind],
            label: `${one.taxon}: taste for ${nameOf(kind)}`,
            holds: 'cover',
          },
          ' of its fill.',
        ],
        removes: { path: [listName, i, 'tastes', kind], words: 'As the one it is like' },
      }),
    ),
  ])

/** What more can be told of animals of one's own; of tastes, those for what grows here. */
export function moreOfOwn(own: readonly Own[], growing: readonly string[]): readonly More[] {
  return [
    {
      words: 'an animal that your lists do not have',
      path: [listName, own.length],
      value: { taxon: `My grazer ${own.length + 1}`, like: 'Salarias fasciatus' },
    },
    ...own.flatMap((one, i) => [
      ...told
        .filter(({ key }) => one[key] === undefined)
        .map(({ key, start, words }) => ({
          words: `${words} of ${one.taxon}`,
          path: [listName, i, key],
          value: start(modelOf(one)),
        })),
      ...[...new Set(growing)]
        .filter((kind) => one.tastes?.[kind] === undefined)
        .map((kind) => ({
          words: `taste of ${one.taxon} for ${nameOf(kind)}`,
          path: [listName, i, 'tastes', kind],
          value: taste(modelOf(one).taxon, kind).preference,
        })),
    ]),
  ]
}

/** The one that it is like; a letter that names none may be mended from the first of the catalogue. */
const modelOf = ({ like }: Own): Grazer => grazer(like) ?? grazers()[0]

/** Who may graze here: the catalogue, the keeper's own, and a name that is neither, lest it be lost in silence. */
export function crewWith(own: readonly Own[], taxon: string | undefined): readonly Choice[] {
  const all = [...crew, ...own.map((one) => ({ value: one.taxon, words: `${one.taxon} (your own)` }))]
  return taxon === undefined || all.some(({ value }) => value === taxon)
    ? all
    : [...all, { value: taxon, words: `${taxon} (nobody described it)` }]
}

const nameOf = (kind: string): string =>
  algaeKinds().some(({ key }) => key === kind) ? algaeKind(kind).title.toLowerCase() : kind
