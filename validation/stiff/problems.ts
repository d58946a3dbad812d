import type { Equations } from '@holdfast/ecosystem'

/** A published initial value problem, and where its solution is known to end. */
export interface StiffProblem {
  readonly name: string
  readonly equations: Equations
  readonly start: readonly number[]
  readonly until: number
  readonly end: readonly number[]
  /** Farthest that ours may end, relative to the largest share of each state, at a tolerance of 1e-6. */
  readonly allowed: number
}

/**
 * Problems of the Test Set for IVP Solvers (Mazzia & Magherini 2008, release 2.4, University of Bari) and of
 * Hairer & Wanner 1996, Solving Ordinary Differential Equations II. Equations and end values from memory; the
 * Radau method of SciPy 1.17 at 1e-11 gives all of them to ten digits or more.
 *
 * Robertson's ends at 40 here; the test set goes on to 1e11, which an explicit method would pay for with some
 * 1e10 evaluations, its steps being bound by a decay of 1e4 for ever.
 */
export const stiffProblems: readonly StiffProblem[] = [
  {
    name: 'Robertson, to 40',
    equations: flowing(3, [1e-6, 1e-9, 1e-6], conserving(), (y, out) => {
      out[0] = 0.04 * y[0]
      out[1] = 1e4 * y[1] * y[2]
      out[2] = 3e7 * y[1] * y[1]
    }),
    start: [1, 0, 0],
    until: 40,
    end: [0.7158270687, 0.9185534765e-5, 0.2841637457],
    allowed: 1e-3,
  },
  {
    name: 'HIRES',
    equations: rated(8, 1e-8, (y, out) => {
      const light = 280 * y[5] * y[7]
      out[0] = -1.71 * y[0] + 0.43 * y[1] + 8.32 * y[2] + 0.0007
      out[1] = 1.71 * y[0] - 8.75 * y[1]
      out[2] = -10.03 * y[2] + 0.43 * y[3] + 0.035 * y[4]
      out[3] = 8.32 * y[1] + 1.71 * y[2] - 1.12 * y[3]
      out[4] = -1.745 * y[4] + 0.43 * y[5] + 0.43 * y[6]
      out[5] = -light + 0.69 * y[3] + 1.71 * y[4] - 0.43 * y[5] + 0.69 * y[6]
      out[6] = light - 1.81 * y[6]
      out[7] = -light + 1.81 * y[6]
    }),
    start: [1, 0, 0, 0, 0, 0, 0, 0.0057],
    until: 321.8122,
    end: [
      0.7371312573325668e-3, 0.1442485726316185e-3, 0.5888729740967575e-4, 0.1175651343283149e-2,
      0.2386356198831331e-2, 0.6238968252742796e-2, 0.2849998395185769e-2, 0.2850001604814231e-2,
    ],
    allowed: 1e-3,
  },
  {
    name: 'OREGO',
    equations: rated(3, 1e-6, (y, out) => {
      out[0] = 77.27 * (y[1] + y[0] * (1 - 8.375e-6 * y[0] - y[1]))
      out[1] = (y[2] - (1 + y[0]) * y[1]) / 77.27
      out[2] = 0.161 * (y[0] - y[2])
    }),
    start: [1, 2, 3],
    until: 360,
    end: [0.1000814870318523e1, 0.1228178521549917e4, 0.1320554942846706e3],
    allowed: 1e-2,
  },
  {
    name: 'van der Pol, 1e-6',
    equations: rated(2, 1e-6, (y, out) => {
      out[0] = y[1]
      out[1] = ((1 - y[0] * y[0]) * y[1] - y[0]) / 1e-6
    }),
    start: [2, 0],
    until: 2,
    end: [0.1706167732170483e1, -0.8928097010247975],
    allowed: 1e-2,
  },
]

/** Robertson's reactions: the first of three becomes the second and back, the second the third. */
function conserving(): readonly (readonly [from: number, to: number])[] {
  return [
    [0, 1],
    [1, 0],
    [1, 2],
  ]
}

/** States that are rated one by one, and may take any sign. */
function rated(
  states: number,
  tolerance: number,
  rates: (y: Float64Array, out: Float64Array) => void,
): Equations {
  const ends = Array.from({ length: states }, (_, i) => [-1, i] as const)
  const every = Array.from({ length: states }, () => tolerance)
  return { ...flowing(states, every, ends, rates), floored: new Uint8Array(states) }
}

/** Flows between states of which none may fall below zero. */
function flowing(
  states: number,
  tolerance: readonly number[],
  ends: readonly (readonly [from: number, to: number])[],
  rates: (y: Float64Array, out: Float64Array) => void,
): Equations {
  return {
    states,
    from: Int32Array.from(ends, ([from]) => from),
    to: Int32Array.from(ends, ([, to]) => to),
    floored: new Uint8Array(states).fill(1),
    // Of the usual strictness; a stricter run shrinks them alike.
    tolerance: Float64Array.from(tolerance, (one) => one * 1e3),
    rates,
  }
}
