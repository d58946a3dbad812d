import { rock, water } from '../accounts/index.ts'
import { amount, concentration, fact, process, split } from '../declare/index.ts'
import { capacityTerms, type Group, growth, habitat, inSystem, nitriteOxidisers } from './nitrifiers.ts'
import { temperature } from './readings.ts'

export const nitriteOxidation = process<Group>({
  id: 'nitrite-oxidation',
  title: 'Nitrite oxidation',
  says: 'A second group turns nitrite into nitrate; it grows later and slower, so that nitrite piles up in a young system.',
  source: 'nijhof-bovendeur-1990',
  each: (system) => inSystem(system, nitriteOxidisers),
  reads: {
    nitrite: concentration(water.nitrite, 'N'),
    oxidisers: amount(({ group }) => group, 'N'),
    rich: amount(rock.nitriteFast, 'N'),
    poor: amount(rock.nitriteSlow, 'N'),
    temperature,
    ...habitat,
  },
  parameters: { ...growth, fastestRich: fact('nit.nob.mumax', 'd⁻¹') },
  terms: {
    ...capacityTerms,
    room: {
      is: 'positive(1 - (rich + poor) / (areal * (rockMass * rockArea + sandMass * sandArea) * yield / fastestRich))',
      unit: '1',
    },
  },
  transfers: [
    split({
      atom: 'N',
      from: water.nitrite,
      rate: 'capacity * monod(nitrite, half + capacity / supply)',
      into: [
        { to: ({ group }) => group, share: 'yield * room' },
        { to: water.nitrate, share: 'rest' },
      ],
    }),
  ],
})
