import { changedVolume } from '../events/water-change.ts'
import type { Day } from '../log.ts'
import { ferricMassSetting } from '../processes/ferric-media.ts'
import type { Moment } from './moment.ts'

/** A change with the system's own source water and salt. */
export const aChange = (day: Day, volume_L: number): Moment => ({
  day,
  happens: 'water change',
  with: { [changedVolume]: volume_L },
})

/** Media out, and others (or none) in. */
export const swap = (day: Day, mass_g: number): readonly Moment[] => [
  { day, happens: 'media removed', with: {} },
  { day, set: { [ferricMassSetting]: mass_g } },
]
