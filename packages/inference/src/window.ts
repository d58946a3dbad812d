import type { Day, FerricMediaReactor, Observation } from '@holdfast/ecosystem'
import type { OutlookQuestion } from './outlook-types.ts'

/** The readings of this stretch before today weigh the members; the water starts from a reading at its start. */
const recentDays = 60

const isWater = ({ quantity }: Observation): boolean => quantity === 'nitrate' || quantity === 'phosphate'

/** The day of the reading from which the water starts: the last one before the recent stretch, else the first. */
export function anchorDay({ observations, asOf, from }: OutlookQuestion): Day {
  const days = observations
    .filter((reading) => isWater(reading) && reading.day <= asOf && reading.day >= from)
    .map(({ day }) => day)
  const before = days.filter((day) => day <= asOf - recentDays)
  if (before.length > 0) return Math.max(...before)
  return days.length > 0 ? Math.min(...days) : from
}

/** The day on which a run begins: media hold what they took since they were placed, so not after that. */
export function firstDay(question: OutlookQuestion, anchor: Day): Day {
  const reactor = question.system.equipment.find(
    (item): item is FerricMediaReactor => item.kind === 'ferric media reactor',
  )
  if (!reactor) return anchor
  const swapped = question.events
    .filter(({ kind }) => kind === 'media placed' || kind === 'media removed')
    .map(({ day }) => day)
  const swaps = [...swapped, reactor.placed ?? question.from].filter((day) => day <= anchor)
  return Math.max(question.from, ...swaps)
}
