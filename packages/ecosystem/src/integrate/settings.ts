export interface Statistics {
  steps: number
  rejected: number
  /** Steps in which an outflow had to be scaled to keep an account from falling below zero. */
  limited: number
  /** Times the slow processes were worked out, and the quick ones. */
  evaluations: number
  quickEvaluations: number
}

export interface IntegratorSettings {
  /** Relative tolerance of a step; absolute ones go with it, in proportion to the usual. */
  readonly tolerance: number
  /** Longest and shortest step, days. */
  readonly longest: number
  readonly shortest: number
}

export const usualSettings: IntegratorSettings = { tolerance: 1e-3, longest: 7, shortest: 1e-6 }
