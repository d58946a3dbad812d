import type { Day, Event } from '@holdfast/ecosystem'
import { plain } from '../figure/numbers.ts'
import type { SystemData } from '../shell/system-data.ts'
import { amount } from '../ways/amounts.ts'
import { isMoved, type Settings, type Today } from './settings.ts'

/** Something that is to be done. */
export interface Planned {
  readonly day: Day
  readonly kind: 'water' | 'media' | 'other'
  /** "Water change, 60 L" */
  readonly says: string
}

interface Husbandry {
  readonly data: Pick<SystemData, 'system' | 'events' | 'asOf'>
  readonly today: Today
  readonly set: Settings
}

/** What is to be done after today: by the log's plans, and by the routines as the levers have them. */
export function plannedEvents(husbandry: Husbandry, horizonDays: number): readonly Planned[] {
  const { data, set } = husbandry
  const named = data.events.filter(({ day }) => day > data.asOf).map(asPlanned)
  const until = data.asOf + horizonDays
  const water = daysAfter(lastWaterChange(husbandry), set.water_days, data.asOf, until)
  return [
    ...named,
    ...(set.water_L > 0 ? water : []).map(
      (day): Planned => ({ day, kind: 'water', says: ofWater(set.water_L) }),
    ),
    ...fillings(husbandry, until).map((day): Planned => ({ day, kind: 'media', says: ofMedia(set.media_g) })),
  ].sort((a, b) => a.day - b.day)
}

const ofWater = (volume_L: number) => `Water change, ${amount('volume', volume_L)}`
const ofMedia = (mass_g: number) => (mass_g > 0 ? `Fresh media, ${plain(mass_g)} g` : 'Media out')

function asPlanned(event: Event): Planned {
  const { day, kind } = event
  if (kind === 'water change') return { day, kind: 'water', says: ofWater(event.volume_L) }
  if (kind === 'media placed' && event.medium !== 'carbon')
    return { day, kind: 'media', says: ofMedia(event.mass_g) }
  return { day, kind: 'other', says: kind.charAt(0).toUpperCase() + kind.slice(1) }
}

const latest = (days: readonly Day[]) => Math.max(...days, Number.NEGATIVE_INFINITY)

/** The log's last one; without any, as if one had been made today. */
function lastWaterChange({ data: { events, asOf } }: Husbandry): Day {
  const last = latest(
    events.filter(({ kind, day }) => kind === 'water change' && day <= asOf).map(({ day }) => day),
  )
  return Number.isFinite(last) ? last : asOf
}

/** Of media, as the model has them: by the plan of today, or from the last filling on where a lever is moved. */
function fillings({ data: { system, events, asOf }, today, set }: Husbandry, until: Day): readonly Day[] {
  const reactor = system.equipment.find((item) => item.kind === 'ferric media reactor')
  if (!reactor) return []
  const placed = reactor.kind === 'ferric media reactor' ? reactor.placed : undefined
  if (!isMoved(set, today, 'media_g', 'media_days'))
    return today.media_days === undefined ? [] : daysAfter(placed ?? asOf, today.media_days, asOf, until)
  const filled = events.filter(
    (event) => event.kind === 'media placed' && event.medium !== 'carbon' && event.day <= asOf,
  )
  return daysAfter(
    latest([placed ?? Number.NEGATIVE_INFINITY, ...filled.map(({ day }) => day)]),
    set.media_days,
    asOf,
    until,
  )
}

/** One interval after the last time and on, the first at once where it is overdue. */
function daysAfter(last: Day, every: number, asOf: Day, until: Day): readonly Day[] {
  if (every <= 0) return []
  const days: Day[] = []
  for (let day = Math.max(last + every, asOf + 0.01); day <= until; day += every) days.push(day)
  return days
}
