import { assemble, type Day, type Model } from '@holdfast/ecosystem'
import { fact, factsOfSystem } from '@holdfast/facts'
import type { OutlookQuestion } from './outlook-types.ts'
import { restsOn } from './rests-on.ts'
import { surveyed } from './surveyed.ts'

/** The system as it was about a day, turned into equations with the keeper's own numbers of facts. */
export const assembledOn = (question: OutlookQuestion, day: Day): Model =>
  assemble(surveyed(question, day), factsOfSystem(question.ownFacts ?? [], question.system.own_animals))

/**
 * A sentence for each of the keeper's own values that moves nothing: the catalogue does not know it, its
 * unit is another, no formula reads it, or nothing in this system rests on it.
 */
export function ownFactRemarks(model: Model): readonly string[] {
  const idle = [...model.facts.own.keys()].filter((id) => !restsOn(model, id))
  return [
    ...model.facts.remarks,
    ...idle.map(
      (id) =>
        `Your own value of ${id} moves nothing: ${fact(id).aside ?? 'nothing in this system rests on it'}.`,
    ),
  ]
}
