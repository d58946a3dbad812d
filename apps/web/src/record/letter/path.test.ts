import { expect, it } from 'vitest'
import { pathOf, placeOf, valueAt, withValue } from './path.ts'

const document = { name: 'Nano', vessels: [{ id: 'display', water: '60 L' }, { id: 'sump' }] }

it('a place is named as a person counts', () => {
  expect(placeOf(['vessels', 0, 'water'])).toBe('vessels 1, water')
  expect(pathOf('vessels 1, water')).toEqual(['vessels', 0, 'water'])
  expect(pathOf('source water, nitrate')).toEqual(['source water', 'nitrate'])
})

it('what is put in stands where it was put, and the rest stays in its order', () => {
  const next = withValue(document, ['vessels', 0, 'water'], '80 L')
  expect(next).toEqual({ ...document, vessels: [{ id: 'display', water: '80 L' }, { id: 'sump' }] })
  expect(Object.keys(next)).toEqual(['name', 'vessels'])
  expect(valueAt(document, ['vessels', 0, 'water'])).toBe('60 L')
})

it('what is taken out of a list leaves no gap', () => {
  expect(withValue(document, ['vessels', 0], undefined).vessels).toEqual([{ id: 'sump' }])
})

it('behind the last of a list there is room for one more', () => {
  expect(withValue(document, ['vessels', 2], { id: 'bin' }).vessels).toHaveLength(3)
})

it('a key that is taken out is gone', () => {
  expect(Object.keys(withValue(document, ['vessels', 0, 'water'], undefined).vessels[0] ?? {})).toEqual([
    'id',
  ])
})
