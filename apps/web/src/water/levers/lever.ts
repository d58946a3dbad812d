import type { System } from '@holdfast/ecosystem'
import type { Setting, Settings, Today } from '../settings.ts'

/** What one lever moves, in a sentence and one or two handles. */
export interface Lever {
  readonly key: 'feed' | 'water' | 'media'
  readonly title: string
  /** Where room is scarce. */
  readonly short: string
  /** What a system must have for it, in words, where it has it not. */
  readonly lacks: (today: Today) => string | undefined
  readonly handles: readonly HandleOfLever[]
  /** What it comes to with the settings as they are. */
  readonly says: (set: Settings, system: System) => string
  /** What it takes in a year, so that a step can be told as what it costs. */
  readonly yearly: (set: Settings) => number
  /** That amount in words: '390 L of salt water'. */
  readonly inWords: (yearly: number) => string
}

export interface HandleOfLever {
  readonly setting: Setting
  readonly title: string
  readonly measure: Measure
  readonly reach: (system: System, today: Today) => Reach
}

/** What a handle counts: litres, days, or grams. */
export type Measure = 'volume' | 'days' | 'mass'

/** In the unit of the measure: L, days or g. */
export interface Reach {
  readonly min: number
  readonly max: number
  readonly step: number
}

export const volumeOf = (system: System) => system.vessels.reduce((sum, { volume_L }) => sum + volume_L, 0)

/** A round number of steps that reaches at least so far. */
export const upTo = (least: number, step: number) => Math.max(0, Math.ceil(least / step - 1e-9)) * step
