import { convert, molarMass, type Substance } from '@holdfast/quantities'

import { broughtMass } from '../events/animals-arrive.ts'
import { dosed } from '../events/dose.ts'
import { driftSetting, removedSetting } from '../events/hand-removal.ts'
import { changedVolume, saltNitrateSetting, saltPhosphateSetting } from '../events/water-change.ts'
import type { Day, DosedSubstance, Event } from '../log.ts'
import { rationSetting } from '../processes/feeding.ts'
import { ferricMassSetting } from '../processes/ferric-media.ts'
import { foamFactorSetting, runningSetting } from '../processes/foam-fractionation.ts'
import { countSetting } from '../processes/grazing.ts'
import { hoursSetting, lightSetting } from '../processes/stands.ts'
import type { Equipment, FerricMediaReactor, Skimmer, System, WaterChangeRoutine } from '../system.ts'

/** A setting that takes a new value, or an event that happens with settings filled just for it. */
export type Moment =
  | { readonly day: Day; readonly set: Readonly<Record<string, number>> }
  | { readonly day: Day; readonly happens: string; readonly with: Readonly<Record<string, number>> }

/** Levers on what is done from a day on. */
export interface Change {
  readonly from: Day
  readonly waterChange?: { readonly volume_L: number; readonly every_days: number }
  readonly feedFactor?: number
  readonly foamFactor?: number
}

export interface TimelineQuestion {
  readonly system: System
  readonly events: readonly Event[]
  readonly from: Day
  readonly to: Day
  /** Today: up to it the log says which water changes were made, after it the routine. */
  readonly asOf: Day
  readonly change?: Change
}

/** All moments of a span in order: what the log says, what the routine says, what levers change. */
export function timeline(question: TimelineQuestion): readonly Moment[] {
  const moments = [
    ...waterChanges(question),
    ...skimmerBreaks(question.system),
    ...mediaRoutine(question),
    ...question.events.flatMap((event) => momentsOf(event, question.system)),
    ...levers(question),
  ]
  return moments.filter(({ day }) => day >= question.from && day < question.to).sort((a, b) => a.day - b.day)
}

const isRoutine = (item: Equipment): item is WaterChangeRoutine => item.kind === 'water change'

/** Changes of the log where it has any; else the routine, as if it had been kept. */
function waterChanges({ system, events, from, to, asOf, change }: TimelineQuestion): readonly Moment[] {
  const logged = events.some(({ kind }) => kind === 'water change')
  const routine = system.equipment.find(isRoutine)
  const lever = change?.waterChange
  const happened: Moment[] = []
  if (!logged && routine) {
    const first =
      Math.max(from, routine.first === undefined ? from : dayOf(routine.first)) + routine.every_days
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

const aChange = (day: Day, volume_L: number): Moment => ({
  day,
  happens: 'water change',
  with: { [changedVolume]: volume_L },
})

function skimmerBreaks(system: System): readonly Moment[] {
  return system.equipment
    .filter((item): item is Skimmer => item.kind === 'skimmer')
    .flatMap((skimmer, index) =>
      (skimmer.off ?? []).flatMap(([from, to]): readonly Moment[] => [
        { day: dayOf(from), set: { [runningSetting(index)]: 0 } },
        { day: dayOf(to), set: { [runningSetting(index)]: 1 } },
      ]),
    )
}

/** Media that are renewed by the calendar, unless the log says when. */
function mediaRoutine({ system, events, from, to }: TimelineQuestion): readonly Moment[] {
  const reactor = system.equipment.find(
    (item): item is FerricMediaReactor => item.kind === 'ferric media reactor',
  )
  if (!reactor) return []
  const moments: Moment[] = []
  const placed = reactor.placed === undefined ? undefined : dayOf(reactor.placed)
  if (placed !== undefined && placed > from) {
    moments.push({ day: from, set: { [ferricMassSetting]: 0 } }, ...swap(placed, reactor.mass_g))
  }
  if (reactor.removed !== undefined) moments.push(...swap(dayOf(reactor.removed), 0))
  const logged = events.some(({ kind }) => kind === 'media placed')
  if (reactor.replaced_every_days !== undefined && !logged) {
    const start = placed ?? from
    const until = reactor.removed === undefined ? to : dayOf(reactor.removed)
    for (let day = start + reactor.replaced_every_days; day < until; day += reactor.replaced_every_days)
      if (day > from) moments.push(...swap(day, reactor.mass_g))
  }
  return moments
}

const swap = (day: Day, mass_g: number): readonly Moment[] => [
  { day, happens: 'media removed', with: {} },
  { day, set: { [ferricMassSetting]: mass_g } },
]

const compounds: Readonly<Record<DosedSubstance, readonly [keyof typeof dosed, Substance]>> = {
  'ammonium chloride': ['ammonia', 'NH4Cl'],
  'sodium nitrate': ['nitrate', 'NaNO3'],
  'potassium nitrate': ['nitrate', 'KNO3'],
  'monopotassium phosphate': ['phosphate', 'KH2PO4'],
  'disodium phosphate': ['phosphate', 'Na2HPO4'],
}

/** µmol that a weighed compound brings; each of these holds one atom of its nutrient. */
const doseOf = (compound: DosedSubstance, mass_g: number): Readonly<Record<string, number>> => {
  const [ion, formula] = compounds[compound]
  return { [dosed[ion]]: (mass_g / molarMass(formula)) * 1e6 }
}

function momentsOf(event: Event, system: System): readonly Moment[] {
  const { day } = event
  switch (event.kind) {
    case 'water change':
      return event.water
        ? [
            {
              day,
              happens: 'water change',
              with: {
                [changedVolume]: event.volume_L,
                // The water of this change is named as a whole, so the source is set aside.
                'source nitrate': convert(event.water.NO3_mg_L, 'mg NO3 L⁻¹', 'µmol L⁻¹'),
                'source phosphate': convert(event.water.PO4_mg_L, 'mg PO4 L⁻¹', 'µmol L⁻¹'),
                [saltNitrateSetting]: 0,
                [saltPhosphateSetting]: 0,
              },
            },
          ]
        : [aChange(day, event.volume_L)]
    case 'media placed':
      return swap(day, event.mass_g)
    case 'media removed':
      return swap(day, 0)
    case 'feed change': {
      const today = system.feeds.reduce((sum, feed) => sum + feed.g_per_day, 0)
      const factor = today > 0 ? event.g_per_day / today : 0
      return [{ day, set: rations(system, factor) }]
    }
    case 'hand removal':
      return [
        {
          day,
          happens: 'hand removal',
          with: {
            [removedSetting(event.surface, event.algae)]: event.share,
            [driftSetting]: event.leftToDrift ? 1 : 0,
          },
        },
      ]
    case 'dose':
      return [{ day, happens: 'dose', with: doseOf(event.substance, event.mass_g) }]
    case 'animals added':
    case 'animals lost': {
      const sign = event.kind === 'animals added' ? 1 : -1
      const arrive: Moment[] =
        event.mass_g === undefined || sign < 0
          ? []
          : [{ day, happens: 'animals added', with: { [broughtMass]: event.count * event.mass_g } }]
      return [...arrive, { day, set: { [`+${countSetting(event.taxon)}`]: sign * event.count } }]
    }
    case 'equipment change':
      return [{ day, set: changedSettings(event.equipment, event.changes) }]
  }
}

const rations = (system: System, factor: number): Readonly<Record<string, number>> =>
  Object.fromEntries(system.feeds.map((feed, index) => [rationSetting(index), feed.g_per_day * factor]))

/** The changes of equipment that a setting answers to; the rest is for people. */
function changedSettings(
  equipment: string,
  changes: Readonly<Record<string, unknown>>,
): Readonly<Record<string, number>> {
  const numbers = Object.entries(changes).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number',
  )
  const settings = numbers.flatMap(([key, value]): readonly (readonly [string, number])[] => {
    if (key === 'light_umol_m2_s') return [[lightSetting(equipment), value]]
    if (key === 'light_h_per_day') return [[hoursSetting(equipment), value]]
    return []
  })
  return Object.fromEntries(settings)
}

function levers({ system, change }: TimelineQuestion): readonly Moment[] {
  if (!change) return []
  const moments: Moment[] = []
  if (change.feedFactor !== undefined)
    moments.push({ day: change.from, set: scaled(system, change.feedFactor) })
  if (change.foamFactor !== undefined)
    moments.push({ day: change.from, set: { [foamFactorSetting]: change.foamFactor } })
  return moments
}

const scaled = (system: System, factor: number): Readonly<Record<string, number>> =>
  Object.fromEntries(system.feeds.map((_, index) => [`*${rationSetting(index)}`, factor]))

/** Noon of a civil date, as the case files and system files give dates; the zone moves it by hours at most. */
export const dayOf = (isoDate: string): Day => Date.parse(`${isoDate.slice(0, 10)}T12:00:00Z`) / 86_400_000
