import { flow, tankLength, volume } from '../holds.ts'
import type { Letter, More, Paragraph, Sentence } from '../paragraph.ts'

/** What holds the water, and how it runs. */
export function vessels({ vessels: all, flow: flows = [], surfaces }: Letter): Paragraph {
  const inUse = (id: string) =>
    surfaces.some(({ vessel }) => vessel === id) || flows.some(({ between }) => between.includes(id))
  return {
    title: 'The water',
    sentences: [
      ...all.map(
        ({ id, length }, i): Sentence => ({
          key: `vessel ${id}`,
          pieces: [
            `The ${id} holds `,
            { path: ['vessels', i, 'water'], label: `Water in the ${id}`, holds: volume },
            ' of water, rock and sand taken off',
            ...(length === undefined
              ? []
              : [
                  ', and is ',
                  { path: ['vessels', i, 'length'], label: `Length of the ${id}`, holds: tankLength },
                  ' long',
                ]),
            '.',
          ],
          ...(i > 0 && !inUse(id) ? { removes: { path: ['vessels', i], words: `No ${id}` } } : {}),
        }),
      ),
      ...flows.map(
        ({ between: [a, b] }, i): Sentence => ({
          key: `flow ${a} ${b}`,
          pieces: [
            `Between ${a} and ${b} run `,
            { path: ['flow', i, 'each way'], label: `Flow between ${a} and ${b}`, holds: flow },
            ' each way.',
          ],
          removes: { path: ['flow', i], words: 'Not joined' },
        }),
      ),
    ],
    more: joinable(
      all.map(({ id }) => id),
      flows.length,
    ),
  }
}

/** A sump comes with the pipe that joins it: first the vessel, then the flow. */
function joinable(ids: readonly string[], flows: number): readonly More[] {
  const [first = 'display', ...others] = ids
  const sump = {
    words: 'a sump',
    path: ['vessels', ids.length],
    value: { id: 'sump', kind: 'sump', water: '60 L' },
  }
  const last = others.at(-1)
  return [
    ...(ids.includes('sump') ? [] : [sump]),
    ...(last !== undefined && flows < others.length
      ? [
          {
            words: `water that runs between ${first} and ${last}`,
            path: ['flow', flows],
            value: { between: [first, last], 'each way': '1500 L/h' },
          },
        ]
      : []),
  ]
}
