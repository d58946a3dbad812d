import { bed, outside, water } from '../accounts/index.ts'
import { type Account, amount, fact, process, split } from '../declare/index.ts'
import { type InSystem, temperature } from './readings.ts'

interface Pool extends InSystem {
  readonly pool: Account
  readonly decayFact: string
}

const pools: readonly (readonly [string, Account, string])[] = [
  ['adrift', water.particles, 'min.detritus.k_fast'],
  ['settled, fast', bed.fast, 'min.detritus.k_fast'],
  ['settled, slow', bed.slow, 'min.detritus.k_slow'],
]

export const mineralisation = process<Pool>({
  id: 'mineralisation',
  title: 'Mineralisation',
  says: 'Waste rots: phosphorus comes out first, then nitrogen, then carbon; a part passes through dissolved organics.',
  source: 'westrich-berner-1984',
  each: (system) => pools.map(([name, pool, decayFact]) => ({ name, of: { system, pool, decayFact } })),
  reads: {
    nitrogen: amount(({ pool }) => pool, 'N'),
    phosphorus: amount(({ pool }) => pool, 'P'),
    carbon: amount(({ pool }) => pool, 'C'),
    temperature,
  },
  parameters: {
    decay: fact(({ decayFact }) => decayFact, 'd⁻¹'),
    warming: fact('min.q10', '1'),
    nitrogenOverCarbon: fact('min.n_over_c', '1'),
    phosphorusOverCarbon: fact('min.p_over_c', '1'),
    dissolves: fact('min.detritus.dissolves', '1'),
  },
  terms: { speed: { is: 'decay * q10(warming, temperature)', unit: 'd⁻¹' } },
  transfers: [
    split({
      atom: 'N',
      from: ({ pool }) => pool,
      rate: 'speed * nitrogenOverCarbon * nitrogen',
      into: [
        { to: water.labile, share: 'dissolves' },
        { to: water.ammonia, share: 'rest' },
      ],
    }),
    split({
      atom: 'P',
      from: ({ pool }) => pool,
      rate: 'speed * phosphorusOverCarbon * phosphorus',
      into: [
        { to: water.labile, share: 'dissolves' },
        { to: water.phosphate, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: ({ pool }) => pool,
      rate: 'speed * carbon',
      into: [
        { to: water.labile, share: 'dissolves' },
        { to: outside.inorganicCarbon, share: 'rest' },
      ],
    }),
  ],
})
