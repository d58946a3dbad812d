import type { Trait } from '@holdfast/facts'
import type { Answers, Chance, Key } from './key.ts'
import { chanceOf } from './key.ts'
import { effortOf, worthOf } from './worth.ts'

/** A growth may be toxic slime from here on: eyes, photos and the drop for the microscope, and no hands. */
export const slimeFrom = 0.05

/** Months that a question must be worth for each minute of its effort; under this it is not asked. */
const leastWorth = 0.001

/** Kinds within this factor of each other are still open to the microscope. */
const stillOpen = 10

/** A question that could be asked now, and what asking it is worth. */
export interface Worthwhile {
  readonly trait: Trait
  /** Months for each minute of its effort. */
  readonly worth: number
}

/**
 * The questions that are worth asking and safe to ask, the most worth for its effort first: so eyes come before
 * hands, and a glance before a microscope.
 *
 * @param passedOver  traits that the keeper cannot look at
 */
export function worthwhile(
  key: Key,
  answers: Answers,
  chances: readonly Chance[],
  passedOver: readonly string[],
): readonly Worthwhile[] {
  const slime = chanceOf(chances, key.slime) > slimeFrom
  const asked = key.traits
    .filter((one) => answers[one.key] === undefined && !passedOver.includes(one.key))
    .filter(({ contact }) => contact !== 'never asked' && !(slime && contact === 'touch'))
    .filter(({ tool }) => tool !== 'microscope' || microscopeTells(key, chances))
    .map((trait) => ({ trait, worth: worthOf(key, answers, chances, trait) / effortOf(trait) }))
    .filter(({ worth }) => worth > leastWorth)
    .sort((a, b) => b.worth - a.worth || (a.trait.key < b.trait.key ? -1 : 1))
  // While it may be slime the hose waits until nothing is left that only looks.
  const looks = asked.filter(({ trait }) => trait.contact !== 'hose')
  return slime && looks.length > 0 ? looks : asked
}

/** Whether a kind that the eye does not part from others is within a factor of ten of its likeliest rival. */
function microscopeTells({ microscopeAmong }: Key, chances: readonly Chance[]): boolean {
  if (microscopeAmong === undefined) return true
  const hidden = chances.find(({ key }) => microscopeAmong.includes(key))
  const rival = chances.find((one) => one !== hidden)
  if (hidden === undefined || rival === undefined || hidden.chance <= slimeFrom) return false
  const [less, more] = [hidden.chance, rival.chance].sort((a, b) => a - b)
  return less * stillOpen >= more
}
