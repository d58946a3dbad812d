import { algaeKinds } from '@holdfast/facts'
import { expect, it } from 'vitest'
import { textures } from './tuft.tsx'

it('every kind of algae of the catalogue has a texture, what is no alga too, and no two the same', () => {
  const kinds = [...algaeKinds().map(({ key }) => key), 'not_algae']
  expect(Object.keys(textures).toSorted()).toEqual(kinds.toSorted())
  expect(new Set(Object.values(textures)).size).toBe(kinds.length)
})
