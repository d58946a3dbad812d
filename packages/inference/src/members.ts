import type { Model } from '@holdfast/ecosystem'
import { normalProbability } from './normal-quantile.ts'
import { priorQuantile } from './prior.ts'
import { normal } from './random.ts'

/**
 * What a member is drawn from: one number for each fact (and for each reading that the water starts
 * from), on the scale on which its prior is the normal distribution of mean 0 and spread 1.
 */
export type Scores = ReadonlyMap<string, number>

/** What is drawn for the readings that the water starts from. */
export const openings: ReadonlySet<string> = new Set(['opening nitrate', 'opening phosphate'])

/** The names of all that is drawn for a model, each once: one fact in two units is one draw. */
export const drawnNames = (model: Model): readonly string[] => [
  ...new Set(model.parameters.map(({ fact: id }) => id)),
  ...openings,
]

/** A member of the prior. */
export const drawScores = (names: readonly string[], seed: number, member: number): Scores =>
  new Map(names.map((name) => [name, normal(seed, member, name)]))

/** The parameters that scores stand for, in the order and the units of the model. */
export function parametersOf(model: Model, scores: Scores): Float64Array {
  return Float64Array.from(model.parameters, (parameter) => {
    const score = scores.get(parameter.fact) ?? 0
    const p = Math.min(1 - 1e-9, Math.max(1e-9, normalProbability(score)))
    return parameter.known
      ? priorQuantile(parameter.band, p)
      : priorQuantile(model.facts.fact(parameter.fact), p) * parameter.factor
  })
}

/** The parameters of one member of the prior. */
export const drawMember = (model: Model, seed: number, member: number): Float64Array =>
  parametersOf(model, drawScores(drawnNames(model), seed, member))
