import { solve } from './cholesky.ts'

/** A reading as the smoother takes it, on a scale on which its error is near normal. */
export interface Target {
  readonly value: number
  /** One spread of its error. */
  readonly error: number
  /** True where nothing was read: members that say less than `value` are right as they are. */
  readonly below: boolean
}

export interface Assimilation {
  /** One list of scores a member. */
  readonly scores: readonly Float64Array[]
  /** What each member says to each target, on the scale of the targets. */
  readonly predicted: readonly Float64Array[]
  readonly targets: readonly Target[]
  /** Factor on the variance of the errors: this update tells 1 / inflation of the readings. */
  readonly inflation: number
  /** A normal draw for a member and a target. */
  readonly perturbation: (member: number, target: number) => number
}

/** A reading farther than this many spreads (of its error and of the members together) is a slip, and counts for less. */
const slip = 3
/** Correlations that this many chance ones would give are taken for chance. */
const chance = 2

/**
 * One update of an ensemble smoother with multiple data assimilation (Emerick & Reynolds 2013, Computers
 * & Geosciences 55:3, doi:10.1016/j.cageo.2012.03.011; form as recalled): each member's scores move by
 * how scores and predictions go together over the ensemble, towards the readings with a draw of their
 * error. Correlations no stronger than chance move nothing.
 */
export function assimilate({
  scores,
  predicted,
  targets,
  inflation,
  perturbation,
}: Assimilation): readonly Float64Array[] {
  const members = scores.length
  const n = targets.length
  const width = scores[0].length
  const meanOf = (lists: readonly Float64Array[], i: number): number =>
    lists.reduce((sum, list) => sum + list[i], 0) / members
  const spread = (lists: readonly Float64Array[], size: number): readonly Float64Array[] => {
    const means = Float64Array.from({ length: size }, (_, i) => meanOf(lists, i))
    return lists.map((list) => list.map((value, i) => value - means[i]))
  }
  const away = spread(predicted, n)
  const variance = targets.map(
    (_, i) => away.reduce((sum, list) => sum + list[i] * list[i], 0) / (members - 1),
  )
  const errors = targets.map(({ value, error, below }, i) => {
    const off = value - meanOf(predicted, i)
    if (below && off > 0) return error * error
    const together = variance[i] + error * error
    const far = (off * off) / (slip * slip * together)
    return error * error * Math.max(1, far)
  })
  const covariance = new Float64Array(n * n)
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      let sum = 0
      for (const list of away) sum += list[i] * list[j]
      covariance[i * n + j] = sum / (members - 1) + (i === j ? inflation * errors[i] : 0)
    }
  const innovations = predicted.map((list, member) =>
    Float64Array.from(targets, ({ value, below }, i) => {
      const wanted = value + Math.sqrt(inflation * errors[i]) * perturbation(member, i)
      return below && list[i] < value ? 0 : wanted - list[i]
    }),
  )
  solve(covariance, n, innovations)
  const scoresAway = spread(scores, width)
  const least = chance / Math.sqrt(members)
  const gain = targets.map((_, i) => {
    const column = new Float64Array(width)
    for (let j = 0; j < width; j++) {
      let both = 0
      let own = 0
      for (let m = 0; m < members; m++) {
        both += scoresAway[m][j] * away[m][i]
        own += scoresAway[m][j] * scoresAway[m][j]
      }
      const correlation = both / Math.sqrt(own * variance[i] * (members - 1) + 1e-300)
      column[j] = Math.abs(correlation) < least ? 0 : both / (members - 1)
    }
    return column
  })
  return scores.map((list, member) =>
    list.map((score, j) => gain.reduce((sum, column, i) => sum + column[j] * innovations[member][i], score)),
  )
}
