import { weightedQuantiles } from '@holdfast/inference'

/** Weighted median over the worlds that the system may be: one in which everything blooms does not speak for the rest. */
export function middle(
  { weights }: { readonly weights: readonly number[] },
  of: (world: number) => number,
): number {
  return weightedQuantiles(
    weights.map((_, world) => of(world)),
    weights,
    [0.5],
  )[0]
}
