import type { Day, Event, System, WaterChangeRoutine } from '@holdfast/ecosystem'

export interface Routine {
  readonly volume_L: number
  readonly every_days: number
}

/** The routine of water changes that the system's description gives; none, and there is none. */
export function routineOf(system: System): Routine | undefined {
  const found = system.equipment.find((item): item is WaterChangeRoutine => item.kind === 'water change')
  return found && { volume_L: found.volume_L, every_days: found.every_days }
}

/** Days after `asOf` on which water is changed: by the log's plans, and by the routine counted from the last change. */
export function plannedWaterChanges(
  events: readonly Event[],
  routine: Routine | undefined,
  asOf: Day,
  horizonDays: number,
): readonly Day[] {
  const changes = events.filter((event) => event.kind === 'water change').map((event) => event.day)
  const named = changes.filter((day) => day > asOf)
  if (!routine || routine.volume_L <= 0 || routine.every_days <= 0) return named
  const last = Math.max(...changes.filter((day) => day <= asOf), Number.NEGATIVE_INFINITY)
  let next = Number.isFinite(last) ? last + routine.every_days : asOf + routine.every_days
  const days = [...named]
  if (next <= asOf) next = asOf + 1
  for (; next <= asOf + horizonDays; next += routine.every_days) days.push(next)
  return days.sort((a, b) => a - b)
}
