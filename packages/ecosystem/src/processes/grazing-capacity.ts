import { consumptionId, type FactsOfSystem } from '@holdfast/facts'
import type { Patch } from '../accounts/index.ts'
import { fallingLine, warmth } from '../forms/index.ts'
import type { Surface, System } from '../system.ts'
import { endOfAppetite } from './appetite.ts'
import { reaches } from './reach.ts'

/** One kind of alga on one patch of a surface. */
export interface Place {
  readonly surface: Surface
  readonly patch: Patch
  readonly kind: string
}

/**
 * Dry algae that one animal of a taxon takes in a day where there is plenty of what it likes best, g d⁻¹; 0 for
 * a taxon that is no grazer. What all animals of a taxon eat together is never more.
 */
export function appetiteOf(
  taxon: string,
  { temperature_C }: Pick<System, 'temperature_C'>,
  { typical, grazer }: FactsOfSystem,
): number {
  const animal = grazer(taxon)
  if (!animal) return 0
  const { best, max } = animal.temperature_C
  return (
    typical(consumptionId(taxon)) *
    typical(`grazing.appetite_left.${animal.appetite}`) *
    warmth(typical('grazing.q10'), temperature_C, best) *
    fallingLine(temperature_C, max, max + endOfAppetite, 0)
  )
}

/**
 * The most that one animal takes of a kind on a patch, g dry d⁻¹: its taste for it times its appetite, and nothing
 * where it does not get. A plan that reckons with this reckons with no less than the simulation ever eats.
 *
 * @param size_cm  of the animal; without it as the catalogue has it grown
 */
export function grazingCapacity(
  taxon: string,
  { surface, patch, kind }: Place,
  system: Pick<System, 'temperature_C'>,
  facts: FactsOfSystem,
  size_cm?: number,
): number {
  return reaches(surface, taxon, patch, size_cm, facts)
    ? facts.taste(taxon, kind).preference * appetiteOf(taxon, system, facts)
    : 0
}
