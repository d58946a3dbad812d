import { crewOf, type System } from '@holdfast/ecosystem'

/** The system as the model needs it where animals of these taxa may come: those that are not there yet stand with none. */
export function withRoomFor(system: System, taxa: readonly string[]): System {
  const known = new Set(crewOf(system).map(({ taxon }) => taxon))
  const comers = [...new Set(taxa)].filter((taxon) => !known.has(taxon))
  return {
    ...system,
    animals: [
      ...system.animals,
      ...comers.map((taxon) => ({ kind: taxon, taxon, count: 0, role: 'grazer' as const })),
    ],
  }
}
