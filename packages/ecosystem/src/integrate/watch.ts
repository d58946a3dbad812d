/** A stretch of time that a member has just gone through, if it was taken. */
export interface Span {
  readonly day: number
  readonly end: number
  readonly taken: boolean
}

/** Who looks on while members are stepped; what lies in the memory is overwritten by the next step. */
export interface Watch {
  /** A step is tried, perhaps not for the first time. */
  readonly begin: () => void
  /** Short steps of the quick states, before these move on. */
  readonly short: (spans: readonly Span[]) => void
  /** Steps of all states, before these move on. */
  readonly long: (spans: readonly Span[]) => void
}
