/**
 * What water changes do to a dissolved substance in well-mixed water to which nothing else is added.
 * Source of all of them: mass balance. Concentrations in any unit, the same throughout; fractions
 * 0 to 1 of the net water. Concentrations are those just before and after changes, never means.
 */
import { exp, ln, pow } from '@holdfast/elementary'
import { demand, OutOfRange } from '../out-of-range.ts'

const concentration = { low: 0, high: Infinity, next: 'Give a concentration of 0 or more.' }
const properFraction = {
  low: 0,
  high: 1,
  aboveLow: true,
  belowHigh: true,
  next: 'Give the part of the net water that one change replaces, such as 0.1.',
}
const count = { low: 0, high: Infinity, next: 'Give how many changes, 0 or more.' }

/** Two concentrations and the water that goes in. */
export interface Dilution {
  readonly from: number
  readonly to: number
  /** Concentration in the new water; 0 if it is clean. */
  readonly newWater: number
}

/**
 * Concentration after `changes` equal batch changes: new + (old - new)(1 - f)^n.
 *
 * @throws OutOfRange for a concentration or count below 0, or a fraction outside 0 to 1
 */
export function concentrationAfterChanges(
  from: number,
  newWater: number,
  changeFraction: number,
  changes: number,
): number {
  demand('concentration', from, concentration)
  demand('concentration of the new water', newWater, concentration)
  return newWater + (from - newWater) * (1 - fractionReplacedByChanges(changeFraction, changes))
}

/**
 * Concentration after new water ran in while as much mixed water ran out: new + (old - new) e^-v.
 *
 * @param exchangedVolumes new water over net water, such as 0.5 for 50 L into 100 L
 * @throws OutOfRange for a value below 0
 */
export function concentrationAfterContinuousExchange(
  from: number,
  newWater: number,
  exchangedVolumes: number,
): number {
  demand('concentration', from, concentration)
  demand('concentration of the new water', newWater, concentration)
  return newWater + (from - newWater) * (1 - fractionReplacedContinuously(exchangedVolumes))
}

/**
 * Part of the first water that is gone after `changes` batch changes: 1 - (1 - f)^n. Five of a fifth
 * replace 67 %, not all.
 *
 * @throws OutOfRange for a fraction outside 0 to 1 or a count below 0
 */
export function fractionReplacedByChanges(changeFraction: number, changes: number): number {
  demand('change fraction', changeFraction, { ...properFraction, aboveLow: false, belowHigh: false })
  demand('changes', changes, count)
  if (changes === 0) return 0
  return 1 - pow(1 - changeFraction, changes)
}

/** Part of the first water that is gone after a well-mixed exchange: 1 - e^-v. @throws OutOfRange below 0 */
export function fractionReplacedContinuously(exchangedVolumes: number): number {
  demand('exchanged volumes', exchangedVolumes, {
    ...count,
    next: 'Give new water over net water, 0 or more.',
  })
  return 1 - exp(-exchangedVolumes)
}

/**
 * Whole batch changes until the concentration is at or past `to`.
 *
 * @throws OutOfRange where no number of changes gets there
 */
export function changesNeeded(dilution: Dilution, changeFraction: number): number {
  demand('change fraction', changeFraction, properFraction)
  const left = shareLeft(dilution)
  if (left >= 1) return 0
  return wholeAtLeast(ln(left) / ln(1 - changeFraction))
}

/**
 * Part to replace in each of `changes` equal changes to come exactly to `to`: 1 - left^(1/n).
 *
 * @throws OutOfRange where no change gets there, or for a count below 1
 */
export function changeFractionNeeded(dilution: Dilution, changes: number): number {
  demand('changes', changes, { ...count, low: 1, next: 'Give how many changes, 1 or more.' })
  return 1 - pow(shareLeft(dilution), 1 / changes)
}

/** New water over net water of a continuous exchange from `from` to `to`: -ln(left). @throws OutOfRange where none does */
export function exchangedVolumesNeeded(dilution: Dilution): number {
  return -ln(shareLeft(dilution))
}

/**
 * Whole changes after which a system with a steady input has come from zero to `share` of the value it
 * levels off at: x_n = (A/f)(1 - (1 - f)^n).
 *
 * @throws OutOfRange for a share or fraction not between 0 and 1
 */
export function changesToShareOfEndValue(share: number, changeFraction: number): number {
  demand('share of the end value', share, {
    ...properFraction,
    next: 'Give a share such as 0.9; the end value itself is never quite reached.',
  })
  demand('change fraction', changeFraction, properFraction)
  return wholeAtLeast(ln(1 - share) / ln(1 - changeFraction))
}

/** Part of the difference to the new water that is to be left. */
function shareLeft({ from, to, newWater }: Dilution): number {
  demand('concentration', from, concentration)
  demand('concentration of the new water', newWater, concentration)
  demand('wanted concentration', to, concentration)
  const left = (to - newWater) / (from - newWater)
  if (Number.isFinite(left) && left > 0 && left <= 1) return left
  if (from === to) return 1
  throw new OutOfRange({
    code: 'out-of-range',
    where: 'wanted concentration',
    got: to,
    accepted: `between ${newWater}, which the new water has, and ${from}`,
    next: 'Changes only move towards the new water. Give a value between the two, or better water.',
  })
}

/** Rounds up, but takes 2.0000000001, which is two and a rounding error, for 2. */
function wholeAtLeast(value: number): number {
  const nearest = Math.round(value)
  return Math.abs(value - nearest) < 1e-9 * Math.max(1, nearest) ? nearest : Math.ceil(value)
}
