import { heldByFilter, water } from '../accounts/index.ts'
import { carry, fact, process, setting } from '../declare/index.ts'
import { type Filter, filtersOf, meshOf, meshSetting, passesOf } from './mechanical-filters.ts'

export const mechanicalFiltration = process<Filter>({
  id: 'mechanical-filtration',
  title: 'Mechanical filtration',
  says: 'Floss and bags catch waste that is adrift; it stays in the system and rots there until they are changed.',
  source: 'cripps-bergheim-2000',
  each: filtersOf,
  reads: {
    passes: setting('passes of the water', 'd⁻¹', ({ system }, facts) => passesOf(system, facts)),
    mesh: setting(({ index }) => meshSetting(index), 'µm', meshOf),
    tabledMesh: setting('tabled mesh', 'µm', (_, facts) => facts.typical('mech.mesh')),
  },
  parameters: {
    capture: fact('mech.capture', '1'),
    grain: fact('mech.grain', 'µm'),
    reach: fact('mech.reach', '1'),
    settles: fact('min.settling', 'd⁻¹'),
  },
  terms: {
    // As many as the mesh catches of each pass, yet of new waste no more than `reach` before it settles.
    caught: { is: 'passes * capture * (grain + tabledMesh) / (grain + mesh)', unit: 'd⁻¹' },
    offered: { is: 'settles * reach / (1 - reach)', unit: 'd⁻¹' },
  },
  transfers: [
    carry({
      from: water.particles,
      to: ({ index }) => heldByFilter(index),
      atoms: ['N', 'P', 'C'],
      rate: 'offered * part(caught, caught + offered)',
    }),
  ],
})
