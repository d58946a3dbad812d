import { heldByFilter, outside } from '../accounts/index.ts'
import { carry, process, setting } from '../declare/index.ts'
import { type Filter, filtersOf } from '../processes/mechanical-filters.ts'

/** Setting that is 1 for the filter that is changed. */
export const emptiedSetting = (index: number): string => `filter ${index} emptied`

export const filterEmptied = process<Filter>({
  id: 'filter emptied',
  title: 'Filter changed',
  says: 'What a filter has caught and not yet lost leaves with it.',
  source: 'mass balance',
  event: true,
  each: filtersOf,
  reads: {
    emptied: setting(
      ({ index }) => emptiedSetting(index),
      '1',
      () => 0,
    ),
  },
  parameters: {},
  transfers: [
    carry({
      from: ({ index }) => heldByFilter(index),
      to: outside.filterWaste,
      atoms: ['N', 'P', 'C'],
      rate: 'emptied',
    }),
  ],
})
