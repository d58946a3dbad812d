import { cultivatedAlga } from '@holdfast/facts'
import { bedOfAlgae, darkDays } from '../accounts/index.ts'
import { amount, fact, setting, state } from '../declare/index.ts'
import type { Refugium, System, TurfScrubber } from '../system.ts'
import type { InSystem } from './readings.ts'
import { hoursSetting, lightSetting } from './stands.ts'

/** A refugium or a screen of which enough is told to reckon with it. */
export interface CultivatedBed extends InSystem {
  /** Names its accounts and settings: refugium, turf scrubber; from the second on with a number. */
  readonly id: string
  readonly kind: 'refugium' | 'turf scrubber'
  /** Key of the facts `alg.<alga>.<what>`. */
  readonly alga: string
  readonly area_m2: number
  readonly light_umol_m2_s: number
  readonly light_h_per_day: number
  readonly item: Refugium | TurfScrubber
}

const isBed = (item: System['equipment'][number]): item is Refugium | TurfScrubber =>
  item.kind === 'refugium' || item.kind === 'turf scrubber'

/** Beds in the order of the equipment. */
export function bedsOf(system: System): readonly CultivatedBed[] {
  const counts = { refugium: 0, 'turf scrubber': 0 }
  return system.equipment.filter(isBed).flatMap((item): readonly CultivatedBed[] => {
    const { kind, light_umol_m2_s, light_h_per_day } = item
    const area_m2 = item.kind === 'refugium' ? item.lit_area_m2 : item.screen_m2
    const number = ++counts[kind]
    if (!isTold(item) || area_m2 === undefined) return []
    if (light_umol_m2_s === undefined || light_h_per_day === undefined) return []
    const id = number === 1 ? kind : `${kind} ${number}`
    return [{ system, id, kind, alga: algaOf(item), area_m2, light_umol_m2_s, light_h_per_day, item }]
  })
}

/** A screen starts between two harvests; how much stands in a refugium only its keeper can say. */
const isTold = (item: Refugium | TurfScrubber): boolean =>
  item.kind === 'turf scrubber' || item.wet_mass_g !== undefined

const algaOf = (item: Refugium | TurfScrubber): string =>
  item.kind === 'turf scrubber' ? 'turf' : (cultivatedAlga(item.algae ?? '')?.key ?? 'chaeto')

/** What the ledger says of beds that are left out, or taken for another alga. */
export function bedsLeftOut(system: System): readonly string[] {
  const told = new Set(bedsOf(system).map(({ item }) => item))
  return system.equipment.filter(isBed).flatMap((item) => {
    if (!told.has(item)) return [`${item.kind}: its mass, lit area, light or hours are not told`]
    if (item.kind === 'turf scrubber' || item.algae === undefined || cultivatedAlga(item.algae)) return []
    return [`growth of ${item.algae}: taken for Chaetomorpha`]
  })
}

export const namedBeds = (system: System) => bedsOf(system).map((of) => ({ name: of.id, of }))

/** Fact of the alga that grows in a bed. */
export const ofAlga =
  (what: string) =>
  ({ alga }: CultivatedBed): string =>
    `alg.${alga}.${what}`

/** What every formula about a bed reads. */
export const standingBed = {
  nitrogen: amount<CultivatedBed>(({ id }) => bedOfAlgae(id), 'N'),
  phosphorus: amount<CultivatedBed>(({ id }) => bedOfAlgae(id), 'P'),
  carbon: amount<CultivatedBed>(({ id }) => bedOfAlgae(id), 'C'),
  dark: state<CultivatedBed>(({ id }) => darkDays(id), 'd'),
}

export const litBed = {
  area: setting<CultivatedBed>(
    ({ id }) => `area ${id}`,
    'm²',
    ({ area_m2 }) => area_m2,
  ),
  light: setting<CultivatedBed>(
    ({ id }) => lightSetting(id),
    'µmol photons m⁻² s⁻¹',
    ({ light_umol_m2_s }) => light_umol_m2_s,
  ),
  hours: setting<CultivatedBed>(
    ({ id }) => hoursSetting(id),
    'h d⁻¹',
    ({ light_h_per_day }) => light_h_per_day,
  ),
  halfDay: setting<CultivatedBed>('half a day', 'h d⁻¹', () => 12),
}

export const carbonOfAlga = fact<CultivatedBed>(ofAlga('c'), 'µmol g⁻¹')
