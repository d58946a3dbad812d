import type { FactsOfSystem } from '@holdfast/facts'
import { pH, unIonisedAmmoniaFraction } from '@holdfast/seawater'
import { outside, water } from '../accounts/index.ts'
import { concentration, fact, move, process, setting } from '../declare/index.ts'
import type { System } from '../system.ts'
import { type InSystem, volumeOf } from './readings.ts'

const told = (system: System, facts: FactsOfSystem): number => system.pH ?? facts.typical('water.ph')

/** Where the constants of ammonium hold; beyond it nobody keeps a reef. */
const isWithin = ({ salinity_psu, temperature_C }: System, value: number): boolean =>
  value >= 6 && value <= 10 && salinity_psu <= 40 && temperature_C <= 40

/** Counts while a cycle waits for its nitrifiers: weeks at a hundredth a day. Air is taken to hold none. */
export const ammoniaEvasion = process<InSystem>({
  id: 'ammonia-evasion',
  title: 'Ammonia to the air',
  says: 'The un-ionised part of ammonia leaves through the surface of the water as gas, a twentieth of it at the pH of a reef.',
  source: 'liss-slater-1974',
  each: (system, facts) => (isWithin(system, told(system, facts)) ? [{ name: '', of: { system } }] : []),
  reads: {
    ammonia: concentration(water.ammonia, 'N'),
    volume: setting('water volume', 'L', ({ system }) => volumeOf(system)),
    gas: setting('un-ionised share', '1', ({ system }, facts) =>
      unIonisedAmmoniaFraction(pH('total', told(system, facts)), system.salinity_psu, system.temperature_C),
    ),
  },
  parameters: { velocity: fact('ammonia.evasion', 'm d⁻¹'), depth: fact('oxygen.depth', 'm') },
  transfers: [
    move({
      atom: 'N',
      from: water.ammonia,
      to: outside.air,
      rate: 'velocity / depth * volume * gas * ammonia',
    }),
  ],
})
