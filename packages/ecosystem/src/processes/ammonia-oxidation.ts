import { rock, water } from '../accounts/index.ts'
import { amount, fact, process, split } from '../declare/index.ts'
import { ammoniaOxidisers, capacityTerms, type Group, growth, habitat, inSystem } from './nitrifiers.ts'
import { ammonia, temperature } from './readings.ts'

export const ammoniaOxidation = process<Group>({
  id: 'ammonia-oxidation',
  title: 'Ammonia oxidation',
  says: 'Oxidisers on rock and sand turn ammonia into nitrite and grow on it; their slow start makes the first peak of a cycle.',
  source: 'nijhof-bovendeur-1990',
  each: (system) => inSystem(system, ammoniaOxidisers),
  reads: {
    ammonia,
    oxidisers: amount(({ group }) => group, 'N'),
    rich: amount(rock.oxidisersFast, 'N'),
    poor: amount(rock.oxidisersSlow, 'N'),
    temperature,
    ...habitat,
  },
  parameters: { ...growth, fastestRich: fact('nit.aob.mumax', 'd⁻¹') },
  terms: {
    ...capacityTerms,
    // The most that the surface carries: what oxidises the areal maximum at full speed.
    room: {
      is: 'positive(1 - (rich + poor) / (areal * (rockMass * rockArea + sandMass * sandArea) * yield / fastestRich))',
      unit: '1',
    },
  },
  transfers: [
    split({
      atom: 'N',
      from: water.ammonia,
      // The water's way to the surface and the cells' own half-saturation, as resistances in a row.
      rate: 'capacity * monod(ammonia, half + capacity / supply)',
      into: [
        { to: ({ group }) => group, share: 'yield * room' },
        { to: water.nitrite, share: 'rest' },
      ],
    }),
  ],
})
