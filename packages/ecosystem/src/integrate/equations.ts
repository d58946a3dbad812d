/**
 * What the integrator needs of a model: states that change by flows between them. A step adds whole
 * flows, so that what one state loses another gains to the last bit the addition allows.
 */
export interface Equations {
  readonly states: number
  readonly fluxes: number
  /** State a flow leaves and enters; -1 for none (a rate of a state without atoms). */
  readonly from: Int32Array
  readonly to: Int32Array
  /** 1 where the state may not fall below zero. */
  readonly floored: Uint8Array
  /** Absolute tolerance of each state; 0 keeps a state out of the error control. */
  readonly tolerance: Float64Array
  /** Writes the rates of all flows, per day. */
  readonly rates: (y: Float64Array, out: Float64Array) => void
}

/** Adds flows to the states they enter and takes them from those they leave. */
export function scatter(equations: Equations, flows: Float64Array, y: Float64Array): void {
  const { from, to, fluxes } = equations
  for (let k = 0; k < fluxes; k++) {
    const flow = flows[k]
    if (from[k] >= 0) y[from[k]] -= flow
    if (to[k] >= 0) y[to[k]] += flow
  }
}
