/** One comparison with the world outside. */
export interface Check {
  readonly name: string
  /** A gap is a miss that is known, named and not hidden: it fails as soon as it would pass. */
  readonly outcome: 'passed' | 'failed' | 'skipped' | 'gap'
  /** What was found, or why it was skipped. */
  readonly says: string
}
