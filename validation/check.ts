/** One comparison with the world outside. */
export interface Check {
  readonly name: string
  /** A gap is a miss that is known, named and not hidden: it fails as soon as it would pass. */
  readonly outcome: 'passed' | 'failed' | 'skipped' | 'gap'
  /** What was found, or why it was skipped. */
  readonly says: string
}

/** A check whose miss may be known: one that is listed as a gap and holds has to come off the list. */
export function judged(name: string, holds: boolean, says: string, knownGap: boolean): Check {
  if (!knownGap) return { name, outcome: holds ? 'passed' : 'failed', says }
  return holds
    ? { name, outcome: 'failed', says: `${says}: a gap no more, take it off the list` }
    : { name, outcome: 'gap', says }
}
