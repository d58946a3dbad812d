import { middle, type Present } from '@holdfast/crew-plan'
import { type Observation, type System, stateIndex, water } from '@holdfast/ecosystem'
import { coralBand, coralBands, type FactsOfSystem } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'

export type Nutrient = 'nitrate' | 'phosphate'

/** A nutrient as it stands against the band of the corals, mg/L of the ion. */
export interface Level {
  readonly value: number
  /** True where the kit read nothing, and `value` is its limit. */
  readonly belowDetection: boolean
  readonly low: number
  readonly high: number
  readonly isHigh: boolean
  /** At nothing, or nearly, in the last two readings. */
  readonly isShort: boolean
}

/** A reading or a look older than this says little of today, d. */
export const recentDays = 42

const inWater: Readonly<Record<Nutrient, readonly [string, string]>> = {
  nitrate: [`${water.nitrate.id}/N`, 'mg NO3 L⁻¹'],
  phosphate: [`${water.phosphate.id}/P`, 'mg PO4 L⁻¹'],
}

/** By the latest reading; where there is none of late, by the middle of the ensemble. */
export function levelOf(
  of: Nutrient,
  system: System,
  observations: readonly Observation[],
  present: Present,
): Level {
  const { facts } = present.model
  const { low, high } = bandOf(of, system, facts)
  const recent = readingsOf(of, observations, present.day)
  const last = recent.at(-1)
  const value = last?.value ?? modelled(of, present)
  const short = facts.typical(`ladder.short.${of}`)
  const two = recent.slice(-2)
  return {
    value,
    belowDetection: last?.belowDetection === true,
    low,
    high,
    isHigh: value > high && last?.belowDetection !== true,
    isShort: two.length === 2 && two.every((one) => one.belowDetection || one.value < short),
  }
}

/** Of the last weeks, the oldest first. */
export function readingsOf(
  of: Observation['quantity'],
  observations: readonly Observation[],
  day: number,
): readonly Observation[] {
  return observations
    .filter((one) => one.quantity === of && one.day <= day && one.day > day - recentDays)
    .toSorted((a, b) => a.day - b.day)
}

function bandOf(of: Nutrient, { corals }: System, facts: FactsOfSystem) {
  const band = (corals && coralBand(corals.kind)) ?? coralBands()[0]
  return facts.fact(band[of])
}

function modelled(of: Nutrient, present: Present): number {
  const [state, unit] = inWater[of]
  const { model, worlds } = present
  const index = stateIndex(model, state)
  return middle(present, (w) => convert(worlds[w].states[index] / model.volume_L, 'µmol L⁻¹', unit))
}
