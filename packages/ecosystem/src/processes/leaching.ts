import { outside, rock, water } from '../accounts/index.ts'
import { type Account, amount, fact, move, process, split } from '../declare/index.ts'
import { type InSystem, temperature } from './readings.ts'
import { leaches } from './rock-kinds.ts'

const products = (inorganic: Account) => [
  { to: water.labile, share: 'dissolves' },
  { to: inorganic, share: 'rest' },
]

/** What kinds of rock hold on the day they are placed: `events/rock-arrives.ts`. */
export const leaching = process<InSystem>({
  id: 'leaching',
  title: 'Leaching of rock',
  says: 'Dead matter in rock rots into the water as other waste does; dried rock gives phosphate back for months.',
  source: 'holdfast-estimate',
  each: (system) => (leaches(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    nitrogen: amount(rock.buried, 'N'),
    phosphorus: amount(rock.buried, 'P'),
    carbon: amount(rock.buried, 'C'),
    exchangeable: amount(rock.exchangeable, 'P'),
    temperature,
  },
  parameters: {
    decay: fact('leach.k.buried', 'd⁻¹'),
    release: fact('leach.k.exchangeable', 'd⁻¹'),
    warming: fact('min.q10', '1'),
    nitrogenOverCarbon: fact('min.n_over_c', '1'),
    phosphorusOverCarbon: fact('min.p_over_c', '1'),
    dissolves: fact('min.detritus.dissolves', '1'),
  },
  terms: { speed: { is: 'decay * q10(warming, temperature)', unit: 'd⁻¹' } },
  transfers: [
    split({
      atom: 'N',
      from: rock.buried,
      rate: 'speed * nitrogenOverCarbon * nitrogen',
      into: products(water.ammonia),
    }),
    split({
      atom: 'P',
      from: rock.buried,
      rate: 'speed * phosphorusOverCarbon * phosphorus',
      into: products(water.phosphate),
    }),
    split({ atom: 'C', from: rock.buried, rate: 'speed * carbon', into: products(outside.inorganicCarbon) }),
    move({ atom: 'P', from: rock.exchangeable, to: water.phosphate, rate: 'release * exchangeable' }),
  ],
})
