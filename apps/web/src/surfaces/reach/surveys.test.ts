import { expect, it } from 'vitest'
import { exampleData } from '../../fixtures/example-system.ts'
import { surveysOf } from './surveys.ts'

it('of several surveys of one kind on one surface the last counts', () => {
  const [only, ...others] = surveysOf('rock_face', exampleData)
  expect(others).toEqual([])
  expect(only).toMatchObject({ algae: 'hair_green', share: 0.02 + 11 * 0.012, date: '2025-11-26' })
})

it('a surface that nobody looked at has none', () => {
  expect(surveysOf('glass', exampleData)).toEqual([])
})
