import { ferricMassSetting } from '../processes/ferric-media.ts'
import { runningSetting } from '../processes/foam-fractionation.ts'
import type { Equipment, FerricMediaReactor, Skimmer, System, WaterChangeRoutine } from '../system.ts'
import { aChange, swap } from './happenings.ts'
import type { Moment, TimelineQuestion } from './moment.ts'

const isRoutine = (item: Equipment): item is WaterChangeRoutine => item.kind === 'water change'

/** Changes of the log where it has any; else the routine, as if it had been kept. */
export function waterChanges({
  system,
  events,
  from,
  to,
  asOf,
  change,
}: TimelineQuestion): readonly Moment[] {
  const logged = events.some(({ kind }) => kind === 'water change')
  const routine = system.equipment.find(isRoutine)
  const lever = change?.waterChange
  const happened: Moment[] = []
  if (!logged && routine) {
    const first = Math.max(from, routine.first === undefined ? from : routine.first) + routine.every_days
    const until = lever && change ? Math.min(to, change.from) : to
    for (let day = first; day < until; day += routine.every_days)
      happened.push(aChange(day, routine.volume_L))
  }
  const planned = lever ?? (logged ? routine : undefined)
  if (planned && planned.volume_L > 0 && planned.every_days > 0) {
    const start = lever && change ? Math.max(asOf, change.from) : asOf
    const last = events.reduce(
      (day, event) => (event.kind === 'water change' && event.day <= start ? Math.max(day, event.day) : day),
      start - planned.every_days,
    )
    for (let day = Math.max(last + planned.every_days, start + 0.01); day < to; day += planned.every_days)
      happened.push(aChange(day, planned.volume_L))
  }
  return happened
}

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
  if (reactor.replaced_every_days !== undefined && !logged) {
    const start = placed ?? from
    const until = reactor.removed ?? to
    for (let day = start + reactor.replaced_every_days; day < until; day += reactor.replaced_every_days)
      if (day > from) moments.push(...swap(day, reactor.mass_g))
  }
  return moments
}
