/** Whether what was said to be so sure came true so often. */

/** One forecast: what was said, and whether it was so. */
export interface Forecast {
  readonly said: number
  readonly was: boolean
}

/** Forecasts of about the same sureness. */
export interface Sureness {
  readonly from: number
  readonly to: number
  readonly many: number
  /** Mean of what was said. */
  readonly said: number
  /** Share that came true. */
  readonly was: number
  /** Twice the standard error of `was`, if what was said is right. */
  readonly error: number
  readonly within: boolean
}

const edges = [0, 0.5, 0.7, 0.9, 0.97, 1] as const

/** The table of reliability; a row without forecasts is left out. */
export function reliability(forecasts: readonly Forecast[]): readonly Sureness[] {
  return edges.slice(1).flatMap((to, i) => {
    const from = edges[i]
    const among = forecasts.filter(({ said }) => said > from && said <= to)
    if (among.length === 0) return []
    const many = among.length
    const said = among.reduce((sum, one) => sum + one.said, 0) / many
    const was = among.filter((one) => one.was).length / many
    const variance = among.reduce((sum, one) => sum + one.said * (1 - one.said), 0)
    const error = (2 * Math.sqrt(variance)) / many
    // A single one more or less is no evidence: a share of a few moves in steps.
    return [{ from, to, many, said, was, error, within: Math.abs(was - said) <= error + 0.5 / many }]
  })
}
