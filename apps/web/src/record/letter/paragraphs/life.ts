import { algaeKinds, coralBands, withOwnAnimals } from '@holdfast/facts'
import type { BlankAt } from '../blank.ts'
import { area, body } from '../holds.ts'
import type { Letter, Paragraph, Sentence } from '../paragraph.ts'
import { crewWith, moreOfOwn, ownAnimals } from './own-animals.ts'

const corals = coralBands().map(({ key, title }) => ({ value: key, words: title.toLowerCase() }))
const algae = algaeKinds().map(({ key, title }) => ({ value: key, words: title }))

type Kept = NonNullable<Letter['animals']>[number]
type Own = NonNullable<Letter['own animals']>

/** Fish, the crew that grazes, corals, and the algae that are there today. */
export function life({
  animals = [],
  'own animals': own = [],
  corals: reef,
  algae: growing = [],
  surfaces,
}: Letter): Paragraph {
  const places = surfaces.map(({ id }) => ({ value: id, words: id }))
  return {
    title: 'What lives in it',
    sentences: [
      ...animals.map(
        (kept, i): Sentence => ({
          key: `animals ${i}`,
          pieces: [
            { path: ['animals', i, 'count'], label: `Number of ${kept.kind}`, holds: 'count' },
            ' ',
            named(kept, i, own),
            ...(kept.mass === undefined
              ? []
              : [
                  ', ',
                  { path: ['animals', i, 'mass'], label: `Mass of one ${kept.kind}`, holds: body },
                  ' each',
                ]),
            '.',
          ],
          removes: { path: ['animals', i], words: 'None of these' },
        }),
      ),
      ...ownAnimals(own),
      ...(reef
        ? [
            {
              key: 'corals',
              pieces: [
                'Corals cover ',
                { path: ['corals', 'area'], label: 'Area of corals', holds: area },
                ', as in a ',
                { path: ['corals', 'kind'], label: 'Kind of reef', holds: corals },
                '.',
              ],
              removes: { path: ['corals'], words: 'No corals yet' },
            } satisfies Sentence,
          ]
        : []),
      ...growing.map(
        (_, i): Sentence => ({
          key: `algae ${i}`,
          pieces: [
            'I see ',
            { path: ['algae', i, 'kind'], label: 'Kind of algae', holds: algae },
            ' on ',
            { path: ['algae', i, 'cover'], label: 'Cover of these algae', holds: 'cover' },
            ' of ',
            { path: ['algae', i, 'surface'], label: 'Surface they grow on', holds: places },
            '.',
          ],
          removes: { path: ['algae', i], words: 'Not seen' },
        }),
      ),
    ],
    more: [
      {
        words: 'fish',
        path: ['animals', animals.length],
        value: { kind: 'fish', count: 2, mass: '10 g', role: 'fish' },
      },
      {
        words: 'an animal that grazes',
        path: ['animals', animals.length],
        value: grazing('Trochus histrio'),
      },
      ...moreOfOwn(
        own,
        growing.map(({ kind }) => kind),
      ),
      ...(reef ? [] : [{ words: 'corals', path: ['corals'], value: { kind: 'mixed', area: '0.2 m2' } }]),
      {
        words: 'algae that I see',
        path: ['algae', growing.length],
        value: { kind: 'hair_green', surface: surfaces[0]?.id, cover: 0.05 },
      },
    ],
  }
}

/** A grazer is chosen from those that are known; fish are named as one likes. */
function named({ role, taxon }: Kept, i: number, own: Own): BlankAt {
  return role === 'grazer' && taxon !== undefined
    ? {
        path: ['animals', i, 'taxon'],
        label: 'Animal that grazes',
        holds: crewWith(own, taxon),
        also: (chosen) => bodyOf(chosen, own),
      }
    : { path: ['animals', i, 'kind'], label: 'Name of the animals', holds: 'words' }
}

/** A grazer brings its name and the mass of a grown one along. */
function bodyOf(taxon: string, own: Own = []) {
  // Masses stand as text in the letter; only whom it is like is wanted here.
  const known = withOwnAnimals(own.map(({ taxon, like }) => ({ taxon, like }))).grazer(taxon)
  return known ? { kind: known.tradeName, mass: `${known.wetMass_g} g` } : {}
}

const grazing = (taxon: string) => ({ kind: taxon, ...bodyOf(taxon), taxon, count: 5, role: 'grazer' })
