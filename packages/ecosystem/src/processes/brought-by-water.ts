import type { FactsOfSystem } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import type { NewWater, NewWaterKind } from '../system.ts'

/** Ions that new water may bring, with their unit as the model takes it from the catalogue. */
const units = { NO3: 'mg NO3 L⁻¹', PO4: 'mg PO4 L⁻¹', SiO2: 'mg SiO2 L⁻¹', NH4: 'mg N L⁻¹' } as const

export type Ion = keyof typeof units

type Typical = FactsOfSystem['typical']

const passes = (tap: string, rejected: string) => (typical: Typical) => typical(tap) * (1 - typical(rejected))
const known = (fact: string) => (typical: Typical) => typical(fact)

/** What each kind usually brings, in `units`. */
const usual: Readonly<Record<NewWaterKind, Partial<Readonly<Record<Ion, (typical: Typical) => number>>>>> = {
  'tap water': { NO3: known('wc.tap.no3'), PO4: known('wc.tap.po4'), SiO2: known('wc.tap.sio2') },
  'reverse osmosis': {
    NO3: passes('wc.tap.no3', 'wc.ro.no3'),
    PO4: passes('wc.tap.po4', 'wc.ro.po4'),
    SiO2: passes('wc.tap.sio2', 'wc.ro.si'),
  },
  deionised: { NO3: known('wc.di'), PO4: known('wc.di.po4'), SiO2: known('wc.di.sio2') },
  'synthetic salt': {
    NO3: known('wc.salt.no3'),
    PO4: known('wc.salt.po4'),
    SiO2: known('wc.salt.sio2'),
    NH4: known('wc.salt.nh4'),
  },
}

const told = (water: NewWater, ion: Ion): number | undefined =>
  ion === 'NH4' ? undefined : water[`${ion}_mg_L`]

const isKnown = (kind: string | undefined): kind is NewWaterKind => kind !== undefined && kind in usual

/** µmol that a litre of new water (or of salt mixed into it) brings of an ion: as told, else as its kind usually does. */
export function broughtBy(water: NewWater, ion: Ion, { typical }: FactsOfSystem): number {
  const { kind } = water
  const ofKind = isKnown(kind) ? usual[kind][ion]?.(typical) : undefined
  return convert(told(water, ion) ?? ofKind ?? 0, units[ion], 'µmol L⁻¹')
}
