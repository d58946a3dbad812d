import { rock } from '../accounts/index.ts'
import { type Account, setting } from '../declare/index.ts'
import type { System } from '../system.ts'
import { hasRockOrSand, type InSystem, porousArea, rockMass } from './readings.ts'

/** A group of nitrifiers, and the facts that set it apart. */
export interface Group extends InSystem {
  readonly group: Account
  readonly fastestFact: string
  readonly halfFact: string
  readonly yieldFact: string
  readonly decayFact: string
  /** Growth of the quick type of this step, by which the room is reckoned. */
  readonly richFact: string
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
      richFact: 'nit.aob.mumax',
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
      richFact: 'nit.aob.mumax',
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
      richFact: 'nit.nob.mumax',
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
      richFact: 'nit.nob.mumax',
    },
  ],
]

export const inSystem = (system: System, groups: readonly (readonly [string, Omit<Group, 'system'>])[]) =>
  hasRockOrSand(system) ? groups.map(([name, group]) => ({ name, of: { system, ...group } })) : []

/** Setting that holds the mass of all rock, kg. */
export const rockMassSetting = 'rock mass'

/** What both steps of nitrification read. */
export const habitat = {
  rockMass: setting<InSystem>(rockMassSetting, 'kg', ({ system }) => rockMass(system)),
  sandMass: setting<InSystem>('sand mass', 'kg', ({ system }) => system.sand?.mass_kg ?? 0),
  planarArea: setting<InSystem>('porous area', 'm²', ({ system }, facts) => porousArea(system, facts)),
}
