import type { Model } from '../assemble/model.ts'
import type { Day } from '../log.ts'
import type { Happening, Moment, Values } from './moment.ts'

/** Slots of settings by their ids. */
export type Slots = ReadonlyMap<string, number>

export const slotsOf = ({ settings }: Model): Slots => new Map(settings.ids.map((id, index) => [id, index]))

/** Changes settings as a moment says; one that the model does not read is nothing to it, and none falls below zero by a loss. */
export function changeSettings(
  settings: Float64Array,
  slots: Slots,
  moment: Exclude<Moment, Happening>,
): void {
  const each = (values: Values, become: (now: number, value: number) => number): void => {
    for (const [id, value] of Object.entries(values)) {
      const slot = slots.get(id)
      if (slot !== undefined) settings[slot] = become(settings[slot], value)
    }
  }
  if ('set' in moment) each(moment.set, (_, value) => value)
  else if ('add' in moment) each(moment.add, (now, value) => Math.max(0, now + value))
  else each(moment.multiply, (now, value) => now * value)
}

/** The settings of a day: those of the description, and what was changed before that day. */
export function settingsOn(model: Model, moments: readonly Moment[], day: Day): Float64Array {
  const settings = Float64Array.from(model.settings.values)
  const slots = slotsOf(model)
  for (const moment of moments)
    if (moment.day < day && !('happens' in moment)) changeSettings(settings, slots, moment)
  return settings
}
