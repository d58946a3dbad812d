import { fact as catalogueFact } from '@holdfast/facts'
import { bed, outside } from '../accounts/index.ts'
import { carry, fact, process, setting } from '../declare/index.ts'
import { type Filter, filtersOf, passesOf, usualMesh } from './mechanical-filters.ts'
import { bindersOf } from './phosphate-binding.ts'

/** The solid does not rot, so what a fine filter holds of it is as good as gone. */
export const fineFiltration = process<Filter>({
  id: 'fine-filtration',
  title: 'Fine filtration of bound phosphate',
  says: 'Phosphate bound by lanthanum leaves through a filter of a few micrometres and through no other.',
  source: 'holdfast-estimate',
  each: (system) =>
    bindersOf(system).length === 0
      ? []
      : filtersOf(system).filter(
          ({ of: { filter } }) => (filter.mesh_um ?? usualMesh) <= catalogueFact('la.fine_mesh').high,
        ),
  reads: { passes: setting('passes of the water', 'd⁻¹', ({ system }) => passesOf(system)) },
  parameters: { capture: fact('mech.capture', '1'), reach: fact('mech.reach', '1') },
  transfers: [
    carry({ from: bed.precipitate, to: outside.filterWaste, atoms: ['P'], rate: 'passes * capture * reach' }),
  ],
})
