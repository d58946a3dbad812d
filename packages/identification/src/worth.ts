import type { Trait } from '@holdfast/facts'
import { bestResponse, doubt } from './cost.ts'
import type { Answers, Chance, Key } from './key.ts'
import { posterior } from './posterior.ts'

/** A bit told about the response is worth so much by itself: what one answer leaves open the next may end. */
const worthOfBit = 0.06

/** Minutes that fetching and using a tool takes, or that a walk to the tank at dawn counts as; estimates of Holdfast. */
const minutes: Readonly<Record<string, number>> = {
  eye: 1,
  diary: 1,
  ruler: 2,
  'gloved fingers': 3,
  'baster, then a gloved finger': 3,
  lens: 4,
  torch: 5,
  photos: 5,
  'thin hose': 5,
  'nail and vinegar': 5,
  'test kits': 10,
  microscope: 15,
  'white paper': 15,
  'cup and peroxide': 15,
}

/** The effort of looking at a trait, minutes. */
export const effortOf = ({ tool }: Trait): number => minutes[tool] ?? 5

/**
 * What asking for a trait is worth: the cost that the answer is expected to spare, with a little for what it
 * tells. Months; may be negative.
 *
 * @param chances  of the kinds, as they stand without the answer
 */
export function worthOf(key: Key, answers: Answers, chances: readonly Chance[], trait: Trait): number {
  const before = bestResponse(key, chances).cost + worthOfBit * doubt(key, chances)
  const after = trait.states.reduce((sum, { key: state }) => {
    const likely = chances.reduce(
      (all, kind) => all + kind.chance * key.chance(kind.key, trait.key, state),
      0,
    )
    const then = posterior(key, { ...answers, [trait.key]: state })
    return sum + likely * (bestResponse(key, then).cost + worthOfBit * doubt(key, then))
  }, 0)
  return before - after
}
