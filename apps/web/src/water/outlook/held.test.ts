import { describe, expect, it } from 'vitest'
import { exampleOutlook } from '../../fixtures/example-outlook.ts'
import { exampleData } from '../../fixtures/example-system.ts'
import { questionOf } from '../question.ts'
import { best, type Held, keep, nextToAsk } from './held.ts'

const held = (hash: string, members: number): Held => ({
  hash,
  answer: exampleOutlook({ ...questionOf(exampleData), members }, hash),
})

describe('the answers that the outlook keeps', () => {
  it('are the latest and those that are wanted', () => {
    const all = [held('today', 200), held('a', 24), held('b', 24), held('c', 24)].reduce<readonly Held[]>(
      (before, next) => keep(before, next, ['today', 'b']),
      [],
    )
    expect(all.map(({ hash }) => hash)).toEqual(['today', 'b', 'c'])
  })

  it('never fall back from the whole ensemble to a rough one for the same inputs', () => {
    const all = keep(keep([], held('a', 200), ['today']), held('a', 24), ['today'])
    expect(best(all, 'a')?.answer.outlook.members).toBe(200)
  })

  it('give none for inputs that were not answered', () => {
    expect(best(keep([], held('a', 24), ['today']), 'b')).toBeUndefined()
  })
})

describe('what is asked next', () => {
  const wanted = ['today', 'levers', 'A', 'B'].map((hash) => ({ hash, members: 60 }))
  const next = (...answers: readonly Held[]) => nextToAsk(answers, wanted)?.hash

  it('is today first, then the levers, however rough', () => {
    expect(next()).toBe('today')
    expect(next(held('today', 16))).toBe('levers')
  })

  it('is the whole of the levers, of today, and of each variant in turn, and at last nothing', () => {
    const rough = [held('today', 16), held('levers', 16)]
    expect(next(...rough)).toBe('levers')
    expect(next(held('today', 16), held('levers', 60))).toBe('today')
    expect(next(held('today', 60), held('levers', 60))).toBe('A')
    expect(next(...['today', 'levers', 'A', 'B'].map((hash) => held(hash, 60)))).toBeUndefined()
  })
})
