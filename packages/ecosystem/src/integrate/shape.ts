/** How large the vectors of a system of equations are, and how its flows run. */
export interface Shape {
  readonly states: number
  /** State a flow leaves and enters; -1 for none (a rate of a state without atoms). */
  readonly from: Int32Array
  readonly to: Int32Array
  /** 1 where the state may not fall below zero. */
  readonly floored: Uint8Array
  /** Absolute tolerance of each state; 0 keeps a state out of the steps: it is an account outside. */
  readonly tolerance: Float64Array
  /** 1 for states that quick processes change or read, and for the flows of these processes; none where there are none. */
  readonly quickStates?: Uint8Array
  readonly quickFlows?: Uint8Array
  /** Quick flows that go both ways between two states. */
  readonly exchanges?: readonly number[]
}
