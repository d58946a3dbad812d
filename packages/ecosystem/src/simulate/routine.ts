import type { Day } from '../log.ts'
import { ferricMassSetting } from '../processes/ferric-media.ts'
import { runningSetting } from '../processes/foam-fractionation.ts'
import type { FerricMediaReactor, Skimmer, System } from '../system.ts'
import { swap } from './happenings.ts'
import { changesOf, daysOf, intervals } from './interval.ts'
import type { Moment, TimelineQuestion } from './moment.ts'

export function skimmerBreaks(system: System): readonly Moment[] {
  return system.equipment
    .filter((item): item is Skimmer => item.kind === 'skimmer')
    .flatMap((skimmer, index) =>
      (skimmer.off ?? []).flatMap(([from, to]): readonly Moment[] => [
        { day: from, set: { [runningSetting(index)]: 0 } },
        { day: to, set: { [runningSetting(index)]: 1 } },
      ]),
    )
}

/** Media that are renewed by the calendar, unless the log says when. */
export function mediaRoutine({ system, events, from, to }: TimelineQuestion): readonly Moment[] {
  const reactor = system.equipment.find(
    (item): item is FerricMediaReactor => item.kind === 'ferric media reactor',
  )
  if (!reactor) return []
  const moments: Moment[] = []
  const { placed } = reactor
  if (placed !== undefined && placed > from) {
    moments.push({ day: from, set: { [ferricMassSetting]: 0 } }, ...swap(placed, reactor.mass_g))
  }
  if (reactor.removed !== undefined) moments.push(...swap(reactor.removed, 0))
  const logged = events.some(({ kind }) => kind === 'media placed')
  if (!logged) {
    const begin = intervals(
      reactor.kind,
      'replaced_every_days',
      reactor.replaced_every_days,
      events,
      placed ?? from,
    )
    const mass = (until: Day): number =>
      changesOf(reactor.kind, 'mass_g', events).findLast(({ day }) => day <= until)?.value ?? reactor.mass_g
    for (const day of daysOf(begin, reactor.removed ?? to))
      if (day > from) moments.push(...swap(day, mass(day)))
  }
  return moments
}
