import type { Piece } from '../blank.ts'
import { changed, interval, nitrate, perDay, phosphate, salinity, temperature } from '../holds.ts'
import type { Letter, Paragraph, Sentence } from '../paragraph.ts'
import type { Path } from '../path.ts'

const sources = [
  { value: 'deionised', words: 'reverse osmosis and a resin' },
  { value: 'reverse osmosis', words: 'reverse osmosis' },
  { value: 'tap water', words: 'the tap' },
]

/** New water, salt, and how the water is kept. */
export function supply(document: Letter): Paragraph {
  const { equipment = [] } = document
  const source = document['source water']
  const changes = equipment.findIndex(({ kind }) => kind === 'water change')
  return {
    title: 'New water',
    sentences: [
      {
        key: 'source',
        pieces: [
          'New water comes from ',
          ...kindOf(['source water', 'kind'], source.kind),
          ...measured('source water', source),
          '; ',
          { path: ['evaporation'], label: 'Water that evaporates', holds: perDay },
          ' evaporate.',
        ],
      },
      {
        key: 'kept at',
        pieces: [
          'It is kept at ',
          { path: ['temperature'], label: 'Temperature', holds: temperature },
          ' and a salinity of ',
          { path: ['salinity'], label: 'Salinity', holds: salinity },
          '.',
        ],
      },
      ...(changes < 0
        ? []
        : [
            {
              key: 'water change',
              pieces: [
                'I change ',
                { path: ['equipment', changes, 'volume'], label: 'Water changed', holds: changed },
                ' every ',
                {
                  path: ['equipment', changes, 'every'],
                  label: 'Time between water changes',
                  holds: interval,
                },
                '.',
              ],
              removes: { path: ['equipment', changes], words: 'No routine' },
            } satisfies Sentence,
          ]),
    ],
    more:
      changes < 0
        ? [
            {
              words: 'a routine of water changes',
              path: ['equipment', equipment.length],
              value: { kind: 'water change', volume: '30 L', every: '2 weeks' },
            },
          ]
        : [],
  }
}

/** A kind that the catalogue does not know stays as it was written, with what was measured of it. */
const kindOf = (path: Path, kind: string | undefined): readonly Piece[] =>
  kind === undefined || sources.some(({ value }) => value === kind)
    ? [{ path, label: 'Source of new water', holds: sources }]
    : [{ path, label: 'Source of new water', holds: 'words' }]

/** Where it was measured, what it brings. */
function measured(key: 'source water', water: Letter['source water']): readonly Piece[] {
  return [
    ...(water.nitrate === undefined
      ? []
      : [' with ', { path: [key, 'nitrate'], label: 'Nitrate in new water', holds: nitrate }]),
    ...(water.phosphate === undefined
      ? []
      : [' and ', { path: [key, 'phosphate'], label: 'Phosphate in new water', holds: phosphate }]),
  ]
}
