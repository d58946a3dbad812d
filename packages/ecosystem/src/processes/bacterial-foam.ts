import { outside, water } from '../accounts/index.ts'
import { carry, fact, process } from '../declare/index.ts'
import { carbonDosingOf } from './carbon-dosing.ts'
import { type Running, skimmerReads, skimmersOf, skimming } from './foam-fractionation.ts'

export const bacterialFoam = process<Running>({
  id: 'bacterial-foam',
  title: 'Bacteria in the foam',
  says: 'Foam takes bacteria that drift; of those on dosed carbon this is the only way out.',
  source: 'holdfast-estimate',
  each: (system) => (carbonDosingOf(system) ? skimmersOf(system) : []),
  reads: skimmerReads,
  parameters: { skimmed: fact('cd.skimmed', '1'), death: fact('cd.death', 'd⁻¹') },
  terms: { skimming },
  transfers: [
    // A skimmer rated for the tank takes `skimmed` of new cells; what it misses dies.
    carry({
      from: water.bacteria,
      to: outside.skimmate,
      atoms: ['N', 'P', 'C'],
      rate: 'death * skimmed / (1 - skimmed) * skimming',
    }),
  ],
})
