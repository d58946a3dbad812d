import { water } from '../accounts/index.ts'
import { change, fact, process } from '../declare/index.ts'
import {
  covering,
  type Growing,
  leaves,
  namedStands,
  ofKind,
  ownCover,
  standFacts,
  standing,
  stored,
} from './stands.ts'

export const algalShedding = process<Growing>({
  id: 'algal-shedding',
  title: 'Shedding of algae',
  says: 'Standing algae drift off by themselves and become waste; a stand that has thinned to nothing frees its surface.',
  source: 'holdfast-estimate',
  slow: true,
  each: namedStands,
  reads: { carbon: standing.carbon, ...covering, ...stored.reads },
  parameters: {
    fullMass: standFacts.fullMass,
    shed: fact(ofKind('shed'), 'd⁻¹'),
    stubble: fact(ofKind('stubble'), 'g m⁻²'),
  },
  terms: stored.terms,
  transfers: [
    ...leaves(water.particles, 'shed'),
    change({ state: ownCover, rate: '-shed * cover * positive(1 - thickness * fullMass / stubble)' }),
  ],
})
