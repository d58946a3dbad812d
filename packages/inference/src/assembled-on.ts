import {
  assemble,
  type Day,
  factsOfOrganics,
  factsOfOxygen,
  factsOfStart,
  type Model,
} from '@holdfast/ecosystem'
import { coralBands, fact, factsOfSystem } from '@holdfast/facts'
import { factsOfReadings } from './kit.ts'
import type { OutlookQuestion } from './outlook-types.ts'
import { surveyed } from './surveyed.ts'

/** The system as it was about a day, turned into equations with the keeper's own numbers of facts. */
export const assembledOn = (question: OutlookQuestion, day: Day): Model =>
  assemble(surveyed(question, day), factsOfSystem(question.ownFacts ?? []))

/** What the answers rest on beside the equations: the first day, what is derived, readings, bands. */
const besides: ReadonlySet<string> = new Set([
  ...Object.values(factsOfStart),
  ...Object.values(factsOfOxygen),
  ...Object.values(factsOfOrganics),
  ...factsOfReadings,
  ...coralBands().flatMap(({ nitrate, phosphate }) => [nitrate, phosphate]),
])

/**
 * A sentence for each of the keeper's own values that moves nothing: the catalogue does not know it, its
 * unit is another, no formula reads it, or nothing in this system rests on it.
 */
export function ownFactRemarks({ facts, factsAsked }: Model): readonly string[] {
  const idle = [...facts.own.keys()].filter((id) => !factsAsked.has(id) && !besides.has(id))
  return [
    ...facts.remarks,
    ...idle.map(
      (id) =>
        `Your own value of ${id} moves nothing: ${fact(id).aside ?? 'nothing in this system rests on it'}.`,
    ),
  ]
}
