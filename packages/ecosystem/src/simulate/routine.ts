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
export function mediaRoutine(question: TimelineQuestion): readonly Moment[] {
  const { system, events, from, change } = question
  const reactor = system.equipment.find(
    (item): item is FerricMediaReactor => item.kind === 'ferric media reactor',
  )
  if (!reactor) return []
  const moments: Moment[] = []
  const { placed } = reactor
  const lever = change?.media
  const to = lever && change ? Math.min(question.to, change.from) : question.to
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
  return lever && change ? [...moments, ...mediaAhead(question, change.from, lever, placed)] : moments
}

/** Fillings that a lever plans: one interval after the last, at once where that is over. */
function mediaAhead(
  { events, to }: TimelineQuestion,
  start: Day,
  { mass_g, every_days }: { readonly mass_g: number; readonly every_days: number },
  placed: Day | undefined,
): readonly Moment[] {
  const last = events.reduce(
    (day, event) =>
      event.kind === 'media placed' && event.medium !== 'carbon' && event.day <= start
        ? Math.max(day, event.day)
        : day,
    placed ?? Number.NEGATIVE_INFINITY,
  )
  const first = Math.max(last + every_days, start + 0.01)
  return daysOf([{ start: first - every_days, every: every_days }], to).flatMap((day) => swap(day, mass_g))
}
