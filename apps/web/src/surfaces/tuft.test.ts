import { algaeKinds } from '@holdfast/facts'
import { expect, it } from 'vitest'
import { textures } from './tuft.tsx'

it('every kind of algae of the catalogue has a texture, and no two the same', () => {
  expect(Object.keys(textures).toSorted()).toEqual(
    algaeKinds()
      .map(({ key }) => key)
      .toSorted(),
  )
  expect(new Set(Object.values(textures)).size).toBe(algaeKinds().length)
})
