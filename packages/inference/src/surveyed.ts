import type { AlgaePresent, Animals, Day, Event, Observation, Rock, System } from '@holdfast/ecosystem'

/** Animals that came later, none of them on the first day: what the run has is fixed before it begins. */
function newcomers(system: System, events: readonly Event[]): readonly Animals[] {
  const known = new Set(system.animals.map(({ taxon }) => taxon))
  const added = events.flatMap((event) => (event.kind === 'animals added' ? [event.taxon] : []))
  return [...new Set(added)]
    .filter((taxon) => !known.has(taxon))
    .map((taxon) => ({ kind: taxon, taxon, count: 0, role: 'grazer' }))
}

/** Kinds of rock that came later, with no mass on the first day: what they bring is known before the run begins. */
function laterRock({ rock }: System, events: readonly Event[]): readonly Rock[] {
  const known = new Set(rock.map(({ kind }) => kind))
  const added = events.flatMap((event) => (event.kind === 'rock added' ? [event.rock.kind] : []))
  return [...new Set(added)]
    .filter((kind) => !known.has(kind))
    .map((kind) => ({ kind, mass_kg: 0, age_days: 0 }))
}

/**
 * The system with the animals and the kinds of rock of its whole log, and with the algae that were there about a day: of each kind at each surface the survey
 * nearest to it, else what the description says. A kind that nobody saw is not there.
 */
export function surveyed(
  question: {
    readonly system: System
    readonly observations: readonly Observation[]
    readonly events: readonly Event[]
  },
  day: Day,
): System {
  const { system, observations, events } = question
  const nearest = new Map<string, { readonly present: AlgaePresent; readonly away: number }>()
  for (const { quantity, surface, algae, value, day: on } of observations) {
    if (quantity !== 'cover' || surface === undefined || algae === undefined) continue
    const place = `${algae} at ${surface}`
    const known = nearest.get(place)
    const away = Math.abs(on - day)
    if (!known || away < known.away)
      nearest.set(place, { present: { kind: algae, surface, cover: value }, away })
  }
  const told = system.algae.filter(({ kind, surface }) => !nearest.has(`${kind} at ${surface}`))
  const animals = [...system.animals, ...newcomers(system, events)]
  const rock = [...system.rock, ...laterRock(system, events)]
  return {
    ...system,
    rock,
    animals,
    algae: [...told, ...[...nearest.values()].map(({ present }) => present)],
  }
}
