import type { Model } from '@holdfast/ecosystem'
import { fact } from '@holdfast/facts'
import { normalProbability } from './normal-quantile.ts'
import { priorQuantile } from './prior.ts'
import { normal } from './random.ts'

/** Where draws of a fact are looked for: mean and spread on the scale on which its prior is normal. */
export interface Focus {
  readonly mean: number
  readonly spread: number
}

/** Facts that the readings speak of, with where to look; every other fact is drawn from its prior. */
export type Foci = ReadonlyMap<string, Focus>

export interface Draw {
  readonly parameters: Float64Array
  /** The draws on the normal scale, by fact. */
  readonly scores: ReadonlyMap<string, number>
  /** Log of prior over proposal: what a draw must be weighed by, since it was not drawn from the prior. */
  readonly logCorrection: number
}

/** The parameters of one member of the ensemble, drawn from the bands of the facts. */
export function drawMember(model: Model, seed: number, member: number, foci: Foci = new Map()): Draw {
  const scores = new Map<string, number>()
  let logCorrection = 0
  const scoreOf = (id: string): number => {
    // One fact in two units is one draw, so the draw goes by the fact and not by the parameter.
    const known = scores.get(id)
    if (known !== undefined) return known
    const draw = normal(seed, member, id)
    const focus = foci.get(id)
    const score = focus ? focus.mean + focus.spread * draw : draw
    if (focus) logCorrection += (draw * draw - score * score) / 2
    scores.set(id, score)
    return score
  }
  const parameters = Float64Array.from(model.parameters, (parameter) => {
    const p = Math.min(1 - 1e-9, Math.max(1e-9, normalProbability(scoreOf(parameter.fact))))
    return parameter.known
      ? priorQuantile(parameter.band, p)
      : priorQuantile(fact(parameter.fact), p) * parameter.factor
  })
  return { parameters, scores, logCorrection }
}
