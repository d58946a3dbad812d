import { rock } from '../accounts/index.ts'
import { type Account, setting } from '../declare/index.ts'
import type { System } from '../system.ts'
import { hasRockOrSand, type InSystem, porousArea } from './readings.ts'

/** A group of nitrifiers, and the facts that set it apart. */
export interface Group extends InSystem {
  readonly group: Account
  readonly fastestFact: string
  readonly halfFact: string
  readonly yieldFact: string
  readonly decayFact: string
}

/**
 * Two types for each step, quick ones of rich water and slow ones of poor water: one half-saturation
 * cannot serve both the first weeks and an old tank.
 */
export const ammoniaOxidisers: readonly (readonly [string, Omit<Group, 'system'>])[] = [
  [
    'of rich water',
    {
      group: rock.oxidisersFast,
      fastestFact: 'nit.aob.mumax',
      halfFact: 'nit.aob.ks',
      yieldFact: 'nit.aob.yield_n',
      decayFact: 'nit.aob.decay',
    },
  ],
  [
    'of poor water',
    {
      group: rock.oxidisersSlow,
      fastestFact: 'nit.aoa.mumax',
      halfFact: 'nit.aoa.ks',
      yieldFact: 'nit.aob.yield_n',
      decayFact: 'nit.poor.decay',
    },
  ],
]

export const nitriteOxidisers: readonly (readonly [string, Omit<Group, 'system'>])[] = [
  [
    'of rich water',
    {
      group: rock.nitriteFast,
      fastestFact: 'nit.nob.mumax',
      halfFact: 'nit.nob.ks',
      yieldFact: 'nit.nob.yield_n',
      decayFact: 'nit.nob.decay',
    },
  ],
  [
    'of poor water',
    {
      group: rock.nitriteSlow,
      fastestFact: 'nit.nob_poor.mumax',
      halfFact: 'nit.nob_poor.ks',
      yieldFact: 'nit.nob.yield_n',
      decayFact: 'nit.poor.decay',
    },
  ],
]

export const inSystem = (system: System, groups: readonly (readonly [string, Omit<Group, 'system'>])[]) =>
  hasRockOrSand(system) ? groups.map(([name, group]) => ({ name, of: { system, ...group } })) : []

const sum = (masses: readonly { readonly mass_kg: number }[]): number =>
  masses.reduce((total, { mass_kg }) => total + mass_kg, 0)

/** What both steps of nitrification read. */
export const habitat = {
  rockMass: setting<InSystem>('rock mass', 'kg', ({ system }) => sum(system.rock)),
  sandMass: setting<InSystem>('sand mass', 'kg', ({ system }) => system.sand?.mass_kg ?? 0),
  planarArea: setting<InSystem>('porous area', 'm²', ({ system }) => porousArea(system)),
}
