/** Growths drawn from the key's own table, to see whether it is as sure as it says where the table is true. */

import { complaintShare, trait } from '@holdfast/facts'
import { type Answers, fieldKey } from '@holdfast/identification'

export interface Drawn {
  readonly answers: Answers
  readonly kind: string
}

/** How a draw is worse than the table. */
export interface Muddle {
  /** Share of sister traits that go with each other: a growth that is unlike its kind in one is so in all. */
  readonly together: number
  /** Share of answers that say nothing: any state, whatever the kind. */
  readonly noise: number
}

/** Of the traits that a keeper may be asked for, the share that one looked at. */
const lookedAt = 0.35

/**
 * One growth: an age, a kind by its share among complaints of that age, and states by their chances.
 *
 * @param uniform  0 to under 1
 */
export function drawGrowth(uniform: () => number, { together, noise }: Muddle): Drawn {
  const ages = trait('age_of_system').states.map(({ key }) => key)
  const age = ages[Math.floor(uniform() * ages.length)]
  const kind = pick(
    fieldKey.kinds.map(({ key }) => [key, complaintShare(key, age)]),
    uniform(),
  )
  const ofSisters = new Map<string, number>()
  const answers: Record<string, string> = { age_of_system: age }
  for (const { key, states, sisters } of fieldKey.traits) {
    if (fieldKey.inFrequency.includes(key) || uniform() > lookedAt) continue
    const alone = uniform()
    const shared = sisters === undefined ? undefined : (ofSisters.get(sisters) ?? alone)
    if (sisters !== undefined && shared !== undefined) ofSisters.set(sisters, shared)
    const at = shared !== undefined && uniform() < together ? shared : alone
    answers[key] =
      uniform() < noise
        ? states[Math.floor(uniform() * states.length)].key
        : pick(
            // The likeliest state first: then one number says how unlike its kind a growth is.
            states
              .map((state): Share => [state.key, fieldKey.chance(kind, key, state.key)])
              .sort((a, b) => b[1] - a[1]),
            at,
          )
  }
  return { answers, kind }
}

type Share = readonly [key: string, share: number]

/** The key in whose part of the whole a number from 0 to under 1 falls. */
function pick(shares: readonly Share[], at: number): string {
  const total = shares.reduce((sum, [, share]) => sum + share, 0)
  let left = at * total
  for (const [key, share] of shares) {
    left -= share
    if (left < 0) return key
  }
  return shares[shares.length - 1][0]
}
