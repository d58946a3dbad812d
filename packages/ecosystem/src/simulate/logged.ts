import { catalogueAlone, type FactsOfSystem } from '@holdfast/facts'
import { convert, molarMass, type Substance } from '@holdfast/quantities'
import { dosed } from '../events/dose.ts'
import { driftSetting, removedSetting } from '../events/hand-removal.ts'
import { changedVolume } from '../events/water-change.ts'
import type { DosedSubstance, Event } from '../log.ts'
import { rationSetting } from '../processes/feeding.ts'
import { saltAmmoniaSetting, saltNitrateSetting, saltPhosphateSetting } from '../processes/new-water.ts'
import { hoursSetting, lightSetting } from '../processes/stands.ts'
import type { System } from '../system.ts'
import { animalsChange } from './animals.ts'
import { equipmentSettings } from './equipment-settings.ts'
import { aChange, rockArrives, siphoned, swap, swapCarbon } from './happenings.ts'
import { aHarvest } from './harvests.ts'
import type { Moment } from './moment.ts'

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

export function momentsOf(
  event: Event,
  system: System,
  facts: FactsOfSystem = catalogueAlone,
): readonly Moment[] {
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
                [saltAmmoniaSetting]: 0,
              },
            },
          ]
        : [aChange(day, event.volume_L)]
    case 'media placed':
      return event.medium === 'carbon' ? swapCarbon(day, event.mass_g) : swap(day, event.mass_g)
    case 'media removed':
      return event.medium === 'carbon' ? swapCarbon(day, 0) : swap(day, 0)
    case 'rock added':
      return rockArrives(day, event.rock)
    case 'siphoning':
      return [siphoned(day, event.part ?? 1)]
    case 'feed change': {
      if (event.feed !== undefined) return [{ day, set: ration(system, event.feed, event.g_per_day) }]
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
    case 'animals lost':
    case 'animals moved':
      return animalsChange(event, system, facts)
    case 'harvest':
      return aHarvest(event, system)
    case 'light change':
      return [{ day, set: changedLight(event, system) }]
    case 'equipment change':
      return [
        {
          day,
          set: {
            ...changedSettings(event.equipment, event.changes),
            ...equipmentSettings(event.equipment, event.changes, system, facts),
          },
        },
      ]
  }
}

/** Lights of the surface that is named, or of all that a lamp shines on. */
function changedLight(
  change: Extract<Event, { readonly kind: 'light change' }>,
  system: System,
): Readonly<Record<string, number>> {
  const lit = system.surfaces.filter(({ light_umol_m2_s }) => light_umol_m2_s > 0).map(({ id }) => id)
  const { light_umol_m2_s, light_h_per_day } = change
  return Object.fromEntries(
    (change.surface === undefined ? lit : [change.surface]).flatMap((surface) => [
      ...(light_umol_m2_s === undefined ? [] : [[lightSetting(surface), light_umol_m2_s] as const]),
      ...(light_h_per_day === undefined ? [] : [[hoursSetting(surface), light_h_per_day] as const]),
    ]),
  )
}

const rations = (system: System, factor: number): Readonly<Record<string, number>> =>
  Object.fromEntries(system.feeds.map((feed, index) => [rationSetting(index), feed.g_per_day * factor]))

/** What is fed of one kind; a kind that the description lacks is fed to no one. */
const ration = (system: System, kind: string, g_per_day: number): Readonly<Record<string, number>> =>
  Object.fromEntries(
    system.feeds.flatMap((feed, index) => (feed.kind === kind ? [[rationSetting(index), g_per_day]] : [])),
  )

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
