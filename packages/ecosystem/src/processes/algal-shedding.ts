import { standAccount, standCover, water } from '../accounts/index.ts'
import { carry, change, fact, process } from '../declare/index.ts'
import { type Growing, namedStands, ofKind, spreads, standFacts, standing, standTerms } from './stands.ts'

export const algalShedding = process<Growing>({
  id: 'algal-shedding',
  title: 'Shedding of algae',
  says: 'Standing algae drift off by themselves and become waste; a stand that has thinned to nothing frees its surface.',
  source: 'holdfast-estimate',
  slow: true,
  each: namedStands,
  reads: { ...standing, spreads },
  parameters: { ...standFacts, shed: fact(ofKind('shed'), 'd⁻¹'), stubble: fact(ofKind('stubble'), 'g m⁻²') },
  terms: standTerms,
  transfers: [
    carry({
      from: ({ stand }) => standAccount(stand),
      to: water.particles,
      atoms: ['N', 'P', 'C'],
      rate: 'shed',
    }),
    change({
      state: ({ stand }) => standCover(stand),
      rate: '-spreads * shed * cover * positive(1 - thickness * fullMass / stubble)',
    }),
  ],
})
