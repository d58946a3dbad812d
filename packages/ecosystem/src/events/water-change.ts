import { process, setting } from '../declare/index.ts'
import { exchangeOfWater, newWater } from '../processes/new-water.ts'
import type { InSystem } from '../processes/readings.ts'

/** Setting that an event fills just before it happens. */
export const changedVolume = 'water change volume'

export const waterChange = process<InSystem>({
  id: 'water change',
  title: 'Water change',
  says: 'A share of all that is in the water leaves; the new water brings what source water and salt carry.',
  source: 'mass balance',
  event: true,
  each: (system) => [{ name: '', of: { system } }],
  reads: { changed: setting(changedVolume, 'L', () => 0), ...newWater },
  parameters: {},
  transfers: exchangeOfWater,
})
