import type { Shape } from './shape.ts'

/**
 * Equations as a function: states that change by flows between them, so that what one state loses another
 * gains to the last bit the addition allows.
 */
export interface Equations extends Shape {
  /** Writes the rates of all flows, per day. */
  readonly rates: (y: Float64Array, out: Float64Array) => void
}

/** Adds flows to the states they enter and takes them from those they leave. */
export function scatter(
  { from, to }: Pick<Shape, 'from' | 'to'>,
  flows: Float64Array,
  y: Float64Array,
): void {
  for (let k = 0; k < flows.length; k++) {
    const flow = flows[k]
    if (from[k] >= 0) y[from[k]] -= flow
    if (to[k] >= 0) y[to[k]] += flow
  }
}
