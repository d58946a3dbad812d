import { bed } from '../accounts/index.ts'
import { carry, fact, process } from '../declare/index.ts'
import { ammoniaOxidisers, type Group, inSystem, nitriteOxidisers } from './nitrifiers.ts'
import { temperature } from './readings.ts'

export const nitrifierDecay = process<Group>({
  id: 'nitrifier-decay',
  title: 'Decay of nitrifiers',
  says: 'Nitrifiers die and become waste.',
  source: 'henze-2000',
  each: (system) => inSystem(system, [...ammoniaOxidisers, ...nitriteOxidisers]),
  reads: { temperature },
  parameters: { decay: fact(({ decayFact }) => decayFact, 'd⁻¹'), warming: fact('nit.q10', '1') },
  transfers: [
    carry({
      from: ({ group }) => group,
      to: bed.fast,
      atoms: ['N'],
      rate: 'decay * q10(warming, temperature)',
    }),
  ],
})
