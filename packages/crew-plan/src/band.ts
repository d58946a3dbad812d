import { weightedQuantiles } from '@holdfast/inference'

/** Weighted median over the worlds that the system may be, with the ends of the 90 % interval. */
export interface Band {
  readonly value: number
  readonly low: number
  readonly high: number
}

/** A band of what a world has, over all worlds. */
export type BandOver = (of: (world: number) => number) => Band

export const bandOver =
  ({ weights }: { readonly weights: readonly number[] }): BandOver =>
  (of) => {
    const values = weights.map((_, world) => of(world))
    const [low, value, high] = weightedQuantiles(values, weights, [0.05, 0.5, 0.95])
    return { low, value, high }
  }
