import { ln } from '@holdfast/elementary'
import type { Response } from '@holdfast/facts'
import type { Chance, Key } from './key.ts'
import { chanceOf } from './key.ts'

/** A response, how likely it is the right one, and what acting on it is expected to cost. */
export interface Weighed {
  readonly response: Response
  /** That the growth is one of its kinds. */
  readonly chance: number
  /** In months lost. */
  readonly cost: number
}

/** The response that is expected to cost least. A key has one response at least. */
export function bestResponse(key: Key, chances: readonly Chance[]): Weighed {
  const byResponse = key.responses.map((response) => ({
    response,
    chance: chanceOf(chances, response.kinds),
  }))
  const weighed = byResponse.map((one) => ({
    ...one,
    cost: byResponse.reduce((sum, other) => sum + other.chance * costOf(one.response, other.response), 0),
  }))
  return weighed.reduce((best, one) => (one.cost < best.cost ? one : best))
}

/** Doing one thing to what another was meant for, in months lost. */
export const costOf = (done: Response, meant: Response): number =>
  done.key === meant.key ? 0 : (done.costsInsteadOf?.[meant.key] ?? 1)

/** How open it is which response is meant: bits. */
export function doubt(key: Key, chances: readonly Chance[]): number {
  return key.responses
    .map(({ kinds }) => chanceOf(chances, kinds))
    .reduce((sum, chance) => (chance > 0 ? sum - (chance * ln(chance)) / ln(2) : sum), 0)
}
