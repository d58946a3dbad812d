import type { Day } from '../log.ts'
import type { Equipment, WaterChangeRoutine } from '../system.ts'
import { aChange } from './happenings.ts'
import { changesOf, daysOf, intervals } from './interval.ts'
import type { Moment, TimelineQuestion } from './moment.ts'

const isRoutine = (item: Equipment): item is WaterChangeRoutine => item.kind === 'water change'

/** The routine as it is on a day: as described, and as the log has changed it since. */
type RoutineOn = (day: Day) => { readonly volume_L: number; readonly every_days: number }

function routineOn(routine: WaterChangeRoutine, { events }: TimelineQuestion): RoutineOn {
  const latest = (key: 'volume_L' | 'every_days', day: Day): number =>
    changesOf(routine.kind, key, events).findLast((change) => change.day <= day)?.value ?? routine[key]
  return (day) => ({ volume_L: latest('volume_L', day), every_days: latest('every_days', day) })
}

/**
 * Changes of the log where it has any; else the routine, as if it had been kept. From today on the routine,
 * or what a lever puts in its place.
 */
export function waterChanges(question: TimelineQuestion): readonly Moment[] {
  const { system, events, to, asOf, change } = question
  const logged = events.some(({ kind }) => kind === 'water change')
  const routine = system.equipment.find(isRoutine)
  const on = routine && routineOn(routine, question)
  const lever = change?.waterChange
  const until = lever && change ? Math.min(to, change.from) : to
  const kept =
    routine && on && !logged
      ? keptDays(routine, question, until).map((day) => aChange(day, on(day).volume_L))
      : []
  const planned = lever ?? (logged ? on?.(asOf) : undefined)
  if (!planned || planned.volume_L <= 0 || planned.every_days <= 0) return kept
  const start = lever && change ? Math.max(asOf, change.from) : asOf
  const last = events.reduce(
    (day, event) => (event.kind === 'water change' && event.day <= start ? Math.max(day, event.day) : day),
    start - planned.every_days,
  )
  const ahead: Moment[] = []
  for (let day = Math.max(last + planned.every_days, start + 0.01); day < to; day += planned.every_days)
    ahead.push(aChange(day, planned.volume_L))
  return [...kept, ...ahead]
}

/** Days of a routine that was kept: its first one where it is told, else one interval after the log begins. */
function keptDays(
  routine: WaterChangeRoutine,
  { events, from }: TimelineQuestion,
  until: Day,
): readonly Day[] {
  const { kind, first, every_days } = routine
  // The rhythm passes through the first one, however long ago it was.
  const before =
    first === undefined ? from : first - every_days * Math.max(1, Math.ceil((first - from) / every_days))
  const spans = intervals(kind, 'every_days', every_days, events, before)
  return daysOf(spans, until).filter((day) => day >= from && (first === undefined || day >= first))
}
