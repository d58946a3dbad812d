import type { Model } from '@holdfast/ecosystem'
import { focusOn } from './focus.ts'
import { type Draw, drawMember, type Foci } from './members.ts'
import { type Running, stopped } from './running.ts'
import { type Weights, weigh } from './weights.ts'

/** What one member came to, and how likely the readings are under it. */
export interface Tried<T> {
  readonly result: T
  readonly logLikelihood: number
}

export interface Ensemble<T> {
  readonly draws: readonly Draw[]
  readonly results: readonly T[]
  readonly weights: Weights
}

export interface EnsembleQuestion<T> {
  readonly model: Model
  readonly members: number
  readonly seed: number
  /** With no reading to weigh by, one round from the prior is all there is to do. */
  readonly readings: number
  readonly try: (draw: Draw, member: number) => Tried<T>
  readonly running: Running
}

/** Rounds that look where the readings point, before the one that counts. */
const pilots = 3
/** Members of a pilot, as share of those of the last round. */
const pilotShare = 0.5

/**
 * Runs an ensemble over the bands of the facts and weighs it by the readings. Pilot rounds find the few
 * facts that the readings speak of; the last round draws those where they point, corrected by weight.
 */
export function ensemble<T>(question: EnsembleQuestion<T>): Ensemble<T> {
  const { members, readings } = question
  const rounds = readings > 0 ? pilots : 0
  const sizes = [...Array.from({ length: rounds }, () => Math.ceil(pilotShare * members)), members]
  const total = sizes.reduce((sum, size) => sum + size, 0)
  let done = 0
  let foci: Foci = new Map()
  let round: Ensemble<T> | undefined
  for (const size of sizes) {
    if (round) foci = focusOn(round.draws, round.weights)
    round = oneRound(question, size, foci, () => question.running.onProgress(++done / total))
  }
  if (!round) throw new Error('An ensemble has one round at least.')
  return round
}

function oneRound<T>(question: EnsembleQuestion<T>, size: number, foci: Foci, tick: () => void): Ensemble<T> {
  const draws: Draw[] = []
  const results: T[] = []
  const logs: number[] = []
  for (let member = 0; member < size; member++) {
    if (question.running.cancelled()) throw stopped
    const draw = drawMember(question.model, question.seed, member, foci)
    const { result, logLikelihood } = question.try(draw, member)
    draws.push(draw)
    results.push(result)
    logs.push(logLikelihood)
    tick()
  }
  const weights = weigh(
    logs,
    draws.map(({ logCorrection }) => logCorrection),
  )
  return { draws, results, weights }
}
