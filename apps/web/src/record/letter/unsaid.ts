import { type Path, pathOf, placeOf } from './path.ts'

/** Places of a document that nobody said anything about: they are as the letter began. */
export type Unsaid = readonly string[]

/** Something was said of a place, and so of all beneath it. */
export const said = (unsaid: Unsaid, path: Path): Unsaid =>
  unsaid.filter((place) => !isAt(pathOf(place), path))

/** What stood at a place is gone; in a list the others move up. */
export function gone(unsaid: Unsaid, path: Path): Unsaid {
  const at = path.at(-1)
  const left = said(unsaid, path)
  if (typeof at !== 'number') return left
  const list = path.slice(0, -1)
  return left.map((place) => {
    const one = pathOf(place)
    const index = one[list.length]
    if (!isAt(one, list) || typeof index !== 'number' || index < at) return place
    return placeOf(one.with(list.length, index - 1))
  })
}

const isAt = (path: Path, beginning: Path): boolean => beginning.every((key, i) => path[i] === key)
