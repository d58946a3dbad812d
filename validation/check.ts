/** One comparison with the world outside. */
export interface Check {
  readonly name: string
  readonly outcome: 'passed' | 'failed' | 'skipped'
  /** What was found, or why it was skipped. */
  readonly says: string
}
