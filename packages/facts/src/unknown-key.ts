/** What was asked of the catalogue and is not in it. */
export interface UnknownKeyIssue {
  readonly code:
    | 'unknown-fact'
    | 'unknown-source'
    | 'unknown-algae-kind'
    | 'unknown-surface-kind'
    | 'unknown-mouth'
    | 'unknown-trait'
    | 'unknown-caution'
    | 'unknown-measure'
  readonly where: string
  readonly got: string
  /** The nearest keys, best first. */
  readonly accepted: readonly string[]
  readonly next: string
}

/** Thrown where a key is not in the catalogue; carries the issue as data. */
export class UnknownKey extends Error {
  override readonly name = 'UnknownKey'
  readonly issue: UnknownKeyIssue

  constructor(code: UnknownKeyIssue['code'], where: string, got: string, keys: Iterable<string>) {
    const accepted = nearestKeys(got, keys)
    const next = `Use one of the nearest: ${accepted.join(', ')}.`
    super(`${where}: "${got}" is not in the catalogue. ${next}`)
    this.issue = { code, where, got, accepted, next }
  }
}

/** The five keys with the fewest edits from `got`; a key that contains it counts as near. */
export function nearestKeys(got: string, keys: Iterable<string>): readonly string[] {
  const wanted = got.toLowerCase()
  return [...keys]
    .map((key) => ({
      key,
      distance: key.toLowerCase().includes(wanted) ? 0 : edits(wanted, key.toLowerCase()),
    }))
    .sort((a, b) => a.distance - b.distance || (a.key < b.key ? -1 : 1))
    .slice(0, 5)
    .map(({ key }) => key)
}

/** Levenshtein distance: insertions, deletions and replacements that turn one text into the other. */
function edits(from: string, to: string): number {
  let previous = Array.from({ length: to.length + 1 }, (_, column) => column)
  for (let row = 1; row <= from.length; row++) {
    const current = [row]
    for (let column = 1; column <= to.length; column++) {
      const replaced = previous[column - 1] + (from[row - 1] === to[column - 1] ? 0 : 1)
      current.push(Math.min(replaced, previous[column] + 1, current[column - 1] + 1))
    }
    previous = current
  }
  return previous[to.length]
}
