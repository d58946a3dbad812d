/** The known word that takes the fewest changes of a letter to reach, if it takes fewer than half of them. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const measured = known.map((one) => ({
    one,
    changes: changesBetween(word.toLowerCase(), one.toLowerCase()),
  }))
  const [best] = measured.sort((a, b) => a.changes - b.changes)
  return best !== undefined && best.changes <= Math.max(1, word.length / 2) ? best.one : undefined
}

/** Letters put in, taken out or changed (Levenshtein 1966), kept row by row. */
function changesBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, place) => place)
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1]
    for (const [j, other] of [...b].entries()) {
      next.push(Math.min(next[j] + 1, row[j + 1] + 1, row[j] + (letter === other ? 0 : 1)))
    }
    row = next
  }
  return row[b.length]
}
