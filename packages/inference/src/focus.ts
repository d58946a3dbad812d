import type { Draw, Foci, Focus } from './members.ts'
import type { Weights } from './weights.ts'

/** Facts at most that are looked for elsewhere than in their prior: more would cost more members than they win. */
const most = 5
/** Means that lie this many of their own errors off the prior are told from chance. */
const told = 2
/** Proposals are wider than what was found, so that nothing is lost at their edges. */
const widened = 1.3

/**
 * Where the next round of members should be drawn: the few facts whose weighted draws lie clear of
 * their prior. The draws are corrected for it by weight, so that prior times likelihood stays what is
 * sampled (population Monte Carlo; Cappé, Guillin, Marin & Robert 2004, J Comput Graph Stat 13:907, as
 * recalled).
 */
export function focusOn(draws: readonly Draw[], weights: Weights): Foci {
  const facts = [...draws[0].scores.keys()]
  const found = facts.map((id) => {
    const scores = draws.map(({ scores }) => scores.get(id) ?? 0)
    const mean = scores.reduce((sum, score, m) => sum + weights.of[m] * score, 0)
    const variance = scores.reduce(
      (sum, score, m) => sum + weights.of[m] * (score - mean) * (score - mean),
      0,
    )
    const focus: Focus = { mean, spread: Math.min(1, Math.max(0.1, widened * Math.sqrt(variance))) }
    // A mean moved, or a spread shrunk, both by more than chance among so many effective members.
    const strength = Math.sqrt(weights.effective) * Math.max(Math.abs(mean), 1.4 * (1 - Math.sqrt(variance)))
    return { id, focus, strength }
  })
  return new Map(
    found
      .filter(({ strength }) => strength > told)
      .sort((a, b) => b.strength - a.strength)
      .slice(0, most)
      .map(({ id, focus }) => [id, focus]),
  )
}
