/** Values below which the weighted members lie with the given probabilities, in order. */
export function weightedQuantiles(
  values: readonly number[],
  weights: readonly number[],
  probabilities: readonly number[],
): readonly number[] {
  const order = values
    .map((_, index) => index)
    .filter((index) => weights[index] > 0)
    .sort((a, b) => values[a] - values[b] || a - b)
  // Each member stands in the middle of its own share; between two, a line.
  const middles: number[] = []
  let sum = 0
  for (const index of order) {
    middles.push(sum + weights[index] / 2)
    sum += weights[index]
  }
  return probabilities.map((probability) => {
    const wanted = probability * sum
    const after = middles.findIndex((middle) => middle >= wanted)
    if (after < 0) return values[order[order.length - 1]]
    if (after === 0) return values[order[0]]
    const [left, right] = [middles[after - 1], middles[after]]
    const [low, high] = [values[order[after - 1]], values[order[after]]]
    return right > left ? low + ((high - low) * (wanted - left)) / (right - left) : high
  })
}
