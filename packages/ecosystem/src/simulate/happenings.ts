import { arrivingRock } from '../events/dead-matter-arrives.ts'
import { siphonedSetting } from '../events/siphoning.ts'
import { changedVolume } from '../events/water-change.ts'
import type { Day } from '../log.ts'
import { carbonMassSetting } from '../processes/activated-carbon.ts'
import { ferricMassSetting } from '../processes/ferric-media.ts'
import { rockMassSetting } from '../processes/nitrifiers.ts'
import type { Rock } from '../system.ts'
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

/** Carbon out, and fresh carbon (or none) in. */
export const swapCarbon = (day: Day, mass_g: number): readonly Moment[] => [
  { day, happens: 'carbon removed', with: {} },
  { day, set: { [carbonMassSetting]: mass_g } },
]

/** Rock that comes into the system, with what it holds. */
export const rockArrives = (day: Day, { kind, mass_kg }: Rock): readonly Moment[] => [
  ...['dead matter arrives', 'exchangeable phosphate arrives', 'nitrifiers arrive'].map(
    (happens): Moment => ({ day, happens, with: { [arrivingRock(kind)]: mass_kg } }),
  ),
  { day, add: { [rockMassSetting]: mass_kg } },
]

/** Floor and sand siphoned, or a part of them. */
export const siphoned = (day: Day, part: number): Moment => ({
  day,
  happens: 'siphoning',
  with: { [siphonedSetting]: part },
})
