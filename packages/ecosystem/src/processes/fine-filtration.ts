import { bed, outside } from '../accounts/index.ts'
import { carry, fact, process, setting } from '../declare/index.ts'
import { type Filter, filtersOf, meshOf, meshSetting, passesOf } from './mechanical-filters.ts'
import { bindersOf } from './phosphate-binding.ts'

/** The solid does not rot, so what a fine filter holds of it is as good as gone. */
export const fineFiltration = process<Filter>({
  id: 'fine-filtration',
  title: 'Fine filtration of bound phosphate',
  says: 'Phosphate bound by lanthanum leaves through a filter of a few micrometres and through no other.',
  source: 'holdfast-estimate',
  each: (system) => (bindersOf(system).length === 0 ? [] : filtersOf(system)),
  reads: {
    passes: setting('passes of the water', 'd⁻¹', ({ system }, facts) => passesOf(system, facts)),
    mesh: setting(({ index }) => meshSetting(index), 'µm', meshOf),
  },
  parameters: {
    capture: fact('mech.capture', '1'),
    reach: fact('mech.reach', '1'),
    fineMesh: fact('la.fine_mesh', 'µm'),
  },
  // A mesh twice as wide lets all of it through.
  terms: { held: { is: 'fallingLine(mesh, fineMesh, 2 * fineMesh, 0)', unit: '1' } },
  transfers: [
    carry({
      from: bed.precipitate,
      to: outside.filterWaste,
      atoms: ['P'],
      rate: 'passes * capture * reach * held',
    }),
  ],
})
