import { type FactsOfSystem, mouth } from '@holdfast/facts'
import { fallingLine } from '../forms/index.ts'

/**
 * How willingly an animal eats a kind of algae that stands so high, 0 to 1: above what its mouth takes whole
 * the taste falls, and so does the rate at which the kind is eaten alone. 0 for what is no grazer.
 */
export function tasteAtHeight(
  taxon: string,
  kind: string,
  height_mm: number,
  { typical, grazer, taste }: FactsOfSystem,
): number {
  const animal = grazer(taxon)
  if (!animal) return 0
  const { fullHeight, floorHeight, floorShare } = mouth(animal.mouth)
  return (
    taste(taxon, kind).preference *
    fallingLine(height_mm, typical(fullHeight), typical(floorHeight), typical(floorShare))
  )
}
