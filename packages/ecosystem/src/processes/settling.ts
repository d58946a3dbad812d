import { bed, water } from '../accounts/index.ts'
import { carry, fact, once, process } from '../declare/index.ts'

export const settling = process<undefined>({
  id: 'settling',
  title: 'Settling',
  says: 'Particles adrift come to rest on floor and rock, part of them fit to rot in weeks, part in a year.',
  source: 'westrich-berner-1984',
  each: () => once(true),
  reads: {},
  parameters: { settles: fact('min.settling', 'd⁻¹'), fastShare: fact('min.detritus.fast_share', '1') },
  transfers: [
    carry({ from: water.particles, to: bed.fast, atoms: ['N', 'P', 'C'], rate: 'settles * fastShare' }),
    carry({ from: water.particles, to: bed.slow, atoms: ['N', 'P', 'C'], rate: 'settles * (1 - fastShare)' }),
  ],
})
