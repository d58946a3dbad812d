import { dateOf } from '@holdfast/logbook'
import type { SystemData } from '../../shell/system-data.ts'

export interface Surveyed {
  readonly algae: string
  /** Of the surface, 0 to 1. */
  readonly share: number
  /** ISO date in the zone of the system. */
  readonly date: string
}

/** The last survey of each kind of algae on a surface. */
export function surveysOf(
  surface: string,
  { observations, system }: Pick<SystemData, 'observations' | 'system'>,
): readonly Surveyed[] {
  const last = new Map<string, Surveyed & { readonly day: number }>()
  for (const { quantity, surface: on, algae, value, day } of observations) {
    if (quantity !== 'cover' || on !== surface || algae === undefined) continue
    const before = last.get(algae)
    if (before === undefined || before.day <= day)
      last.set(algae, { algae, share: value, day, date: dateOf(day, system.timeZone) })
  }
  return [...last.values()]
}
