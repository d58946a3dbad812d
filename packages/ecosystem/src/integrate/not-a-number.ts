/** A state became no number: an input was none, or a formula divided nothing by nothing. */
export class NotANumber extends Error {
  override readonly name = 'NotANumber'
  /** Indexes of the states that are no numbers; empty where only a rate is none. */
  readonly states: readonly number[]

  constructor(states: Float64Array) {
    const none = [...states.keys()].filter((i) => Number.isNaN(states[i]))
    super(`States ${none.join(', ')} are no numbers. Look at start, settings and parameters of the run.`)
    this.states = none
  }
}
