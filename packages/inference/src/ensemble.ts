import type { Model } from '@holdfast/ecosystem'
import type { InRounds } from './in-rounds.ts'
import { drawnNames, drawScores, parametersOf, type Scores } from './members.ts'
import { normal } from './random.ts'
import { assimilate, type Target } from './smoother.ts'
import { type Weights, weigh } from './weights.ts'

/** A member to run. */
export interface Draw {
  readonly parameters: Float64Array
  readonly scores: Scores
}

/** What one member came to, what it says to each reading, and how likely the readings are under it. */
export interface Tried<T> {
  readonly result: T
  readonly predicted: Float64Array
  readonly logLikelihood: number
}

export interface Ensemble<T> {
  readonly results: readonly T[]
  readonly weights: Weights
}

export interface EnsembleQuestion<T> {
  readonly model: Model
  readonly members: number
  readonly seed: number
  /** The readings, on the smoother's scale. */
  readonly targets: readonly Target[]
  /** Runs some draws side by side. */
  readonly try: (draws: readonly Draw[]) => readonly Tried<T>[]
}

/** Each smoothing tells this share of the readings, the first ones little; what is left the weights tell exactly. */
const told = [0.08, 0.12, 0.2, 0.2]
const leftForWeights = 1 - told.reduce((sum, share) => sum + share, 0)

/** Spreads from the middle of its prior that a draw may be moved to. */
const farthest = 3

/**
 * An ensemble over the bands of the facts. Some rounds move it where the readings point, taking
 * their errors for normal; the last is weighed by the exact likelihood, with blunders and limits of
 * detection, raised to what the smoothing left untold. Members are never moved by hand: each is a run of
 * the assembled system with its own facts.
 */
export function ensemble<T>(question: EnsembleQuestion<T>): InRounds<Draw, Tried<T>, Ensemble<T>> {
  const { members, targets } = question
  const shares = targets.length > 0 && members > 2 ? told : []
  return { run: question.try, rounds: () => roundsOf(question, shares), total: (shares.length + 1) * members }
}

function* roundsOf<T>(
  { model, members, seed, targets }: EnsembleQuestion<T>,
  shares: readonly number[],
): Generator<readonly Draw[], Ensemble<T>, readonly Tried<T>[]> {
  const names = drawnNames(model)
  let scores: readonly Float64Array[] = Array.from({ length: members }, (_, member) =>
    Float64Array.from(drawScores(names, seed, member).values()),
  )
  const drawOf = (list: Float64Array): Draw => {
    const named = new Map(names.map((name, i) => [name, list[i]]))
    return { parameters: parametersOf(model, named), scores: named }
  }
  let tried = yield scores.map(drawOf)
  for (const [round, share] of shares.entries()) {
    const moved = assimilate({
      scores,
      predicted: tried.map(({ predicted }) => predicted),
      targets,
      inflation: 1 / share,
      perturbation: (member, target) => normal(seed, member, `error of reading ${target} in round ${round}`),
    })
    // No member leaves the far ends of what the facts allow.
    scores = moved.map((list) => list.map((score) => Math.min(farthest, Math.max(-farthest, score))))
    tried = yield scores.map(drawOf)
  }
  const power = shares.length > 0 ? leftForWeights : 1
  const weights = weigh(tried.map(({ logLikelihood }) => power * logLikelihood))
  return {
    results: tried.map(({ result }) => result),
    // What the rounds told and what the weights told of the rest.
    weights: { ...weights, tempering: 1 - power + power * weights.tempering },
  }
}
