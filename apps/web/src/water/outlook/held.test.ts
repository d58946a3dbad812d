import { describe, expect, it } from 'vitest'
import { exampleOutlook } from '../../fixtures/example-outlook.ts'
import { exampleData } from '../../fixtures/example-system.ts'
import { questionOf } from '../question.ts'
import { best, type Held, keep } from './held.ts'

const held = (hash: string, members: number): Held => ({
  hash,
  answer: exampleOutlook({ ...questionOf(exampleData), members }, hash),
})

describe('the answers that the outlook keeps', () => {
  it('are the latest and that to what is done today', () => {
    const all = [held('today', 200), held('a', 24), held('b', 24)].reduce<readonly Held[]>(
      (before, next) => keep(before, next, 'today'),
      [],
    )
    expect(all.map(({ hash }) => hash)).toEqual(['today', 'b'])
  })

  it('never fall back from the whole ensemble to a rough one for the same inputs', () => {
    const all = keep(keep([], held('a', 200), 'today'), held('a', 24), 'today')
    expect(best(all, 'a')?.answer.outlook.members).toBe(200)
  })

  it('give none for inputs that were not answered', () => {
    expect(best(keep([], held('a', 24), 'today'), 'b')).toBeUndefined()
  })
})
