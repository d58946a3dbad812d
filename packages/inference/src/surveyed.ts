import type { AlgaePresent, Day, Observation, System } from '@holdfast/ecosystem'

/**
 * The system with the algae that were there about a day: of each kind at each surface the survey
 * nearest to it, else what the description says. A kind that nobody saw is not there.
 */
export function surveyed(
  question: { readonly system: System; readonly observations: readonly Observation[] },
  day: Day,
): System {
  const { system, observations } = question
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
  return { ...system, algae: [...told, ...[...nearest.values()].map(({ present }) => present)] }
}
