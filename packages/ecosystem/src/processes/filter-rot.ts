import { heldByFilter, outside, water } from '../accounts/index.ts'
import { amount, fact, process, split } from '../declare/index.ts'
import { type Filter, filtersOf } from './mechanical-filters.ts'
import { temperature } from './readings.ts'

export const filterRot = process<Filter>({
  id: 'filter-rot',
  title: 'Rotting in filters',
  says: 'What a filter holds goes on rotting into the water, phosphorus first: the longer it waits for its change, the less it takes out.',
  source: 'stewart-2006',
  each: filtersOf,
  reads: {
    nitrogen: amount(({ index }) => heldByFilter(index), 'N'),
    phosphorus: amount(({ index }) => heldByFilter(index), 'P'),
    carbon: amount(({ index }) => heldByFilter(index), 'C'),
    temperature,
  },
  parameters: {
    leavesN: fact('mech.leach.n', 'd⁻¹'),
    leavesP: fact('mech.leach.p', 'd⁻¹'),
    nitrogenOverCarbon: fact('min.n_over_c', '1'),
    dissolves: fact('min.detritus.dissolves', '1'),
    warming: fact('min.q10', '1'),
  },
  terms: { warmth: { is: 'q10(warming, temperature)', unit: '1' } },
  transfers: [
    split({
      atom: 'N',
      from: ({ index }) => heldByFilter(index),
      rate: 'warmth * leavesN * nitrogen',
      into: [
        { to: water.labile, share: 'dissolves' },
        { to: water.ammonia, share: 'rest' },
      ],
    }),
    split({
      atom: 'P',
      from: ({ index }) => heldByFilter(index),
      rate: 'warmth * leavesP * phosphorus',
      into: [
        { to: water.labile, share: 'dissolves' },
        { to: water.phosphate, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: ({ index }) => heldByFilter(index),
      rate: 'warmth * leavesN / nitrogenOverCarbon * carbon',
      into: [
        { to: water.labile, share: 'dissolves' },
        { to: outside.inorganicCarbon, share: 'rest' },
      ],
    }),
  ],
})
