import { bedOfAlgae, water } from '../accounts/index.ts'
import { fact, move, process, split } from '../declare/index.ts'
import { type CultivatedBed, carbonOfAlga, namedBeds, ofAlga, standingBed } from './cultivated-beds.ts'

/** Leaking follows from respiration: carbon is burnt, and the N and P it held have no place left. */
export const bedDecay = process<CultivatedBed>({
  id: 'bed-decay',
  title: 'Leaking and rotting of cultivated algae',
  says: 'A bed that burns more than it makes leaks what its tissue no longer holds; after one to several weeks in the dark it rots, and of what has died phosphorus dissolves ahead of nitrogen.',
  source: 'cladophora-peel-harvey',
  each: namedBeds,
  reads: standingBed,
  parameters: {
    carbonContent: carbonOfAlga,
    fedN: fact(ofAlga('n_max'), 'µmol g⁻¹'),
    fedP: fact(ofAlga('p_max'), 'µmol g⁻¹'),
    leak: fact('alg.leak', 'd⁻¹'),
    dieback: fact('alg.dieback', 'd⁻¹'),
    rotAfter: fact('alg.rot_after', 'd'),
    dissolvesOfP: fact('alg.rot_p_dissolves', '1'),
    dissolves: fact('alg.rot_dissolves', '1'),
  },
  terms: {
    mass: { is: 'carbon / carbonContent', unit: 'g' },
    rot: { is: 'dieback * (1 - fallingLine(dark, rotAfter, 2 * rotAfter, 0))', unit: 'd⁻¹' },
  },
  transfers: [
    move({
      atom: 'N',
      from: ({ id }) => bedOfAlgae(id),
      to: water.ammonia,
      rate: 'leak * positive(nitrogen - fedN * mass)',
    }),
    move({
      atom: 'P',
      from: ({ id }) => bedOfAlgae(id),
      to: water.phosphate,
      rate: 'leak * positive(phosphorus - fedP * mass)',
    }),
    split({
      atom: 'N',
      from: ({ id }) => bedOfAlgae(id),
      rate: 'rot * nitrogen',
      into: [
        { to: water.labile, share: 'dissolves' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split({
      atom: 'P',
      from: ({ id }) => bedOfAlgae(id),
      rate: 'rot * phosphorus',
      into: [
        { to: water.phosphate, share: 'dissolvesOfP' },
        { to: water.particles, share: 'rest' },
      ],
    }),
    split({
      atom: 'C',
      from: ({ id }) => bedOfAlgae(id),
      rate: 'rot * carbon',
      into: [
        { to: water.labile, share: 'dissolves' },
        { to: water.particles, share: 'rest' },
      ],
    }),
  ],
})
