import { assemble, type Day, type Model } from '@holdfast/ecosystem'
import { factsOfSystem } from '@holdfast/facts'
import type { OutlookQuestion } from './outlook-types.ts'
import { surveyed } from './surveyed.ts'

/** The system as it was about a day, turned into equations with the keeper's own numbers of facts. */
export const assembledOn = (question: OutlookQuestion, day: Day): Model =>
  assemble(surveyed(question, day), factsOfSystem(question.ownFacts ?? []))

/**
 * A sentence for each of the keeper's own values that moves nothing: the catalogue does not know it, its
 * unit is another, or nothing in this system is drawn from it.
 */
export function ownFactRemarks({ facts, parameters }: Model): readonly string[] {
  const drawn = new Set(parameters.filter(({ known }) => !known).map(({ fact }) => fact))
  const idle = [...facts.own.keys()].filter((id) => !drawn.has(id))
  return [
    ...facts.remarks,
    ...idle.map((id) => `Your own value of ${id} moves nothing: no process of this system draws on it.`),
  ]
}
