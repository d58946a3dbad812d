import { livesAt, type System } from '@holdfast/ecosystem'

/**
 * The system as the model needs it where animals of these taxa may come: those that do not live there yet stand
 * with none.
 *
 * @param home  the vessel that they come to
 */
export function withRoomFor(system: System, taxa: readonly string[], home: string): System {
  const isHere = (taxon: string): boolean =>
    system.animals.some((one) => one.taxon === taxon) && livesAt(system, taxon, { vessel: home })
  const comers = [...new Set(taxa)].filter((taxon) => !isHere(taxon))
  return {
    ...system,
    animals: [
      ...system.animals,
      ...comers.map((taxon) => ({ kind: taxon, taxon, count: 0, role: 'grazer' as const, vessel: home })),
    ],
  }
}
