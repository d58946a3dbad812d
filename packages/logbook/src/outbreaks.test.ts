import { expect, test } from 'vitest'
import type { EntryOf, Stored } from './entries/entry.ts'
import sample from './entries/samples/outbreak.v1.json' with { type: 'json' }
import { outbreaksOf } from './outbreaks.ts'

type Body = EntryOf<'outbreak'>['body']

let made = 0
/** A step of an outbreak as it is stored. */
function step(at: string, body: Partial<Body> & Pick<Body, 'stage'>): Stored {
  made += 1
  const id = `018f3a1e-7c00-7000-8000-${String(made).padStart(12, '0')}`
  const outbreak = 'Hair by the weir'
  return { ...sample, id, at, body: { outbreak, text: '', ...body }, knownAt: sample.madeAt } as Stored
}

const life = [
  step('2026-01-02', { stage: 'seen', surface: 'overflow', carriedIn: 'frags of 3 May' }),
  step('2026-01-05', { stage: 'named', algae: 'hair_green', done: 'Pull by hand' }),
  step('2026-01-20', { stage: 'held', done: 'Shade the place' }),
  step('2026-02-01', { stage: 'gone' }),
]

test('an outbreak stands where its last entry says, with all that was told of it', () => {
  const [one, ...others] = outbreaksOf(life)
  expect(others).toEqual([])
  expect(one).toEqual({
    name: 'Hair by the weir',
    stage: 'gone',
    from: '2026-01-02',
    since: '2026-02-01',
    algae: 'hair_green',
    surfaces: ['overflow'],
    carriedIn: 'frags of 3 May',
    done: [
      { what: 'Pull by hand', on: '2026-01-05' },
      { what: 'Shade the place', on: '2026-01-20' },
    ],
    stopped: [],
  })
})

test('one that is back says what worked the last time and what was stopped since', () => {
  const [one] = outbreaksOf([
    ...life,
    step('2026-03-01', { stage: 'watched', stopped: 'the lid of the box' }),
    step('2026-04-01', { stage: 'back', outbreak: 'hair by the weir', done: 'Blackout' }),
  ])
  expect(one).toMatchObject({
    stage: 'back',
    since: '2026-04-01',
    worked: 'Shade the place',
    stopped: [{ what: 'the lid of the box', on: '2026-03-01' }],
  })
})

test('the order in which entries were received makes no difference, and the latest change comes first', () => {
  const other = step('2026-02-10', { stage: 'seen', outbreak: 'Slime on the sand' })
  const names = (entries: readonly Stored[]) => outbreaksOf(entries).map(({ name, stage }) => [name, stage])
  expect(names([other, ...life].toReversed())).toEqual(names([...life, other]))
  expect(names([...life, other])[0]).toEqual(['Slime on the sand', 'seen'])
})
