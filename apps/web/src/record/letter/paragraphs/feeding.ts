import { feedKind, feedKinds } from '@holdfast/facts'
import type { BlankAt } from '../blank.ts'
import { fed, share } from '../holds.ts'
import type { Letter, Paragraph, Sentence } from '../paragraph.ts'

const known = feedKinds().map(({ key, title }) => ({ value: key, words: title.toLowerCase() }))

/** What is fed. Of a kind the catalogue knows it is left out what is in it, and taken as usual. */
export function feeding({ feeds = [] }: Letter): Paragraph {
  return {
    title: 'Food',
    sentences: feeds.map(
      (feed, i): Sentence => ({
        key: `feed ${i}`,
        pieces: [
          i === 0 ? 'I feed ' : 'And I feed ',
          { path: ['feeds', i, 'amount'], label: 'Fed a day', holds: fed },
          ' of ',
          kindOf(feed.kind, i),
          ...(feed.nitrogen === undefined
            ? []
            : [
                ', of which ',
                { path: ['feeds', i, 'nitrogen'], label: `Nitrogen in ${feed.kind}`, holds: share },
                ' is nitrogen',
              ]),
          ...(feed.phosphorus === undefined
            ? []
            : [
                ' and ',
                { path: ['feeds', i, 'phosphorus'], label: `Phosphorus in ${feed.kind}`, holds: share },
                ' phosphorus',
              ]),
          '.',
        ],
        removes: { path: ['feeds', i], words: 'Not fed' },
      }),
    ),
    more: [
      {
        words: feeds.length > 0 ? 'another food' : 'food',
        path: ['feeds', feeds.length],
        value: { kind: 'mysis', amount: '2 g/d' },
      },
    ],
  }
}

/** A name that the keeper gave to a feed stays, since the log speaks of it by that name. */
function kindOf(kind: string, i: number): BlankAt {
  const path = ['feeds', i, 'kind']
  const isKey = feedKind(kind)?.key === kind
  return { path, label: 'Kind of food', holds: isKey ? known : 'words' }
}
