import { age, area, depth, light, mass } from '../holds.ts'
import type { Letter, Paragraph, Sentence } from '../paragraph.ts'

const rockKinds = [
  { value: 'cured live', words: 'cured live rock' },
  { value: 'uncured live', words: 'live rock that was not cured' },
  { value: 'quarried dry', words: 'dry rock from a quarry' },
  { value: 'man-made dry', words: 'dry man-made rock' },
  { value: 'dried ex-ocean', words: 'dried rock that once was in the sea' },
]

const surfaceWords: Readonly<Record<string, string>> = {
  rock_face: 'lit faces of rock',
  rock_underside: 'undersides and crevices of rock',
  glass: 'glass',
  sand: 'sand',
  plumbing_overflow: 'overflow and pipes',
  equipment: 'equipment',
  frag_rack: 'racks',
}

/** Rock, sand, and all that algae can grip. */
export function ground({ rock = [], sand, surfaces, vessels }: Letter): Paragraph {
  const vessel = vessels[0]?.id ?? 'display'
  return {
    title: 'The ground',
    sentences: [
      ...rock.map(
        (_, i): Sentence => ({
          key: `rock ${i}`,
          pieces: [
            i === 0 ? 'There are ' : 'There are also ',
            { path: ['rock', i, 'mass'], label: 'Mass of rock', holds: mass },
            ' of ',
            { path: ['rock', i, 'kind'], label: 'Kind of rock', holds: rockKinds },
            ', in the system for ',
            { path: ['rock', i, 'age'], label: 'Time the rock has been in', holds: age },
            '.',
          ],
          removes: { path: ['rock', i], words: 'No such rock' },
        }),
      ),
      ...(sand
        ? [
            {
              key: 'sand',
              pieces: [
                'The sand weighs ',
                { path: ['sand', 'mass'], label: 'Mass of sand', holds: mass },
                ' and lies ',
                { path: ['sand', 'depth'], label: 'Depth of the sand', holds: depth },
                ' deep.',
              ],
              removes: { path: ['sand'], words: 'The bottom is bare' },
            } satisfies Sentence,
          ]
        : []),
      ...surfaces.map(
        ({ id, kind, hours }, i): Sentence => ({
          key: `surface ${id}`,
          pieces: [
            i === 0 ? 'Algae could grip ' : 'They could grip ',
            { path: ['surfaces', i, 'area'], label: `Area of ${id}`, holds: area },
            ` of ${surfaceWords[kind] ?? id}, lit with `,
            { path: ['surfaces', i, 'light'], label: `Light on ${id}`, holds: light },
            ' for ',
            { path: ['surfaces', i, 'hours'], label: `Hours of light on ${id}`, holds: 'count' },
            `${hours === 1 ? ' hour' : ' hours'} a day, wet for `,
            { path: ['surfaces', i, 'age'], label: `Age of ${id}`, holds: age },
            '.',
          ],
          ...(surfaces.length > 1 ? { removes: { path: ['surfaces', i], words: 'No such surface' } } : {}),
        }),
      ),
    ],
    more: [
      {
        words: rock.length > 0 ? 'more rock of another kind' : 'rock',
        path: ['rock', rock.length],
        value: { kind: 'quarried dry', mass: '10 kg', age: '30 d' },
      },
      ...(sand ? [] : [{ words: 'sand', path: ['sand'], value: { mass: '20 kg', depth: '3 cm' } }]),
      ...Object.entries(newSurfaces)
        .filter(([id]) => surfaces.every((one) => one.id !== id))
        .map(([id, { kind, ...given }]) => ({
          words: surfaceWords[kind] ?? id,
          path: ['surfaces', surfaces.length],
          value: { id, vessel, kind, ...given },
        })),
    ],
  }
}

const newSurfaces = {
  'overflow and pipes': {
    kind: 'plumbing_overflow',
    area: '0.2 m2',
    light: '20 µmol/m2/s',
    hours: 9,
    age: '200 d',
  },
  'frag racks': { kind: 'frag_rack', area: '0.2 m2', light: '150 µmol/m2/s', hours: 9, age: '200 d' },
}
