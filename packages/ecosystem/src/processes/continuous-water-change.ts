import { process, setting } from '../declare/index.ts'
import type { ContinuousWaterChange, System } from '../system.ts'
import { exchangeOfWater, newWater } from './new-water.ts'
import type { InSystem } from './readings.ts'

/** Setting that holds how much a pump changes, L/d. */
export const continuousChangeSetting = 'continuous water change'

const isContinuous = (item: System['equipment'][number]): item is ContinuousWaterChange =>
  item.kind === 'continuous water change'

const changedDaily = ({ equipment }: System): number =>
  equipment.filter(isContinuous).reduce((sum, { L_per_day }) => sum + L_per_day, 0)

export const continuousWaterChange = process<InSystem>({
  id: 'continuous-water-change',
  title: 'Continuous water change',
  says: 'A pump takes old water out and puts new water in all day; the system mixes them, so that a tenth a day leaves less than a tenth.',
  source: 'mass balance',
  each: (system) => (system.equipment.some(isContinuous) ? [{ name: '', of: { system } }] : []),
  reads: {
    changed: setting(continuousChangeSetting, 'L d⁻¹', ({ system }) => changedDaily(system)),
    ...newWater,
  },
  parameters: {},
  transfers: exchangeOfWater,
})
