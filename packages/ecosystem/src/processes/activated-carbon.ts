import type { FactsOfSystem } from '@holdfast/facts'
import { media, water } from '../accounts/index.ts'
import { type Account, amount, carry, fact, process, setting } from '../declare/index.ts'
import type { ActivatedCarbon, System } from '../system.ts'
import { type InSystem, volumeOf } from './readings.ts'

interface Adsorbed extends InSystem {
  readonly carbon: ActivatedCarbon
  readonly organics: Account
}

/** Setting that holds the mass of carbon in use, g; zero when there is none. */
export const carbonMassSetting = 'activated carbon mass'

export const activatedCarbonOf = ({ equipment }: System): ActivatedCarbon | undefined =>
  equipment.find((item): item is ActivatedCarbon => item.kind === 'activated carbon')

/** Keepers who tell no mass are taken to use what is usual. */
export const carbonMass = (system: System, { mass_g }: ActivatedCarbon, facts: FactsOfSystem): number =>
  mass_g ?? facts.typical('gac.dose') * volumeOf(system)

/** Dissolved organics beyond the background of sea water, which no account holds because nothing takes it. */
export const activatedCarbon = process<Adsorbed>({
  id: 'activated-carbon',
  title: 'Activated carbon',
  says: 'Carbon takes dissolved organics, with the nitrogen and phosphorus in them, until it is full; the background of sea water it leaves.',
  source: 'feldman-2008',
  each: (system) => {
    const carbon = activatedCarbonOf(system)
    return carbon
      ? [water.labile, water.skimmable, water.resistant].map((organics) => ({
          name: organics.title,
          of: { system, carbon, organics },
        }))
      : []
  },
  reads: {
    held: amount(media.carbon, 'C'),
    mass: setting(carbonMassSetting, 'g', ({ system, carbon }, facts) => carbonMass(system, carbon, facts)),
    volume: setting('water volume', 'L', ({ system }) => volumeOf(system)),
  },
  parameters: {
    removal: fact('gac.k', 'L g⁻¹ d⁻¹'),
    share: fact('gac.share', '1'),
    capacity: fact('gac.q', 'µmol g⁻¹'),
  },
  transfers: [
    carry({
      from: ({ organics }) => organics,
      to: media.carbon,
      atoms: ['N', 'P', 'C'],
      rate: 'removal * share * mass / volume * positive(1 - part(held, mass * capacity))',
    }),
  ],
})
