/** Members of the benchmark system, run as an outlook runs them: in Node and in a browser's worker alike. */
import {
  coverOf,
  type IntegratorSettings,
  type MemberRun,
  pairs,
  patches,
  patchShare,
  type Statistics,
  simulateTogether,
  stateIndex,
  usualSettings,
} from '@holdfast/ecosystem'
import { drawMember } from '@holdfast/inference'
import type { BenchmarkRun } from './benchmark-system.ts'

/** Members of a run, the first of them number `first`. */
export interface Share {
  readonly first: number
  readonly count: number
  readonly days: number
}

/** Every day, as the outlook draws them. */
export const daily = (days: number): readonly number[] => Array.from({ length: days }, (_, day) => day + 0.8)

const membersOf = (run: BenchmarkRun, { first, count }: Omit<Share, 'days'>): readonly MemberRun[] =>
  Array.from({ length: count }, (_, n) => ({
    parameters: drawMember(run.model, 1, first + n),
    start: run.start,
  }))

/** What an outlook keeps of a member: what can be seen, day after day. */
export interface Course {
  /** Each of `seenIn` on each day. */
  readonly seen: readonly Float64Array[]
  readonly statistics: Statistics
}

export interface Seen {
  readonly name: 'nitrate' | 'phosphate' | 'cover'
  readonly of: (states: Float64Array, parameters: Float64Array) => number
}

/** Nitrate, phosphate, and the cover of every kind on every surface, its patches together. */
export function seenIn({ model }: BenchmarkRun): readonly Seen[] {
  const amount = (name: Seen['name'], id: string): Seen => {
    const i = stateIndex(model, id)
    return { name, of: (states) => states[i] }
  }
  const kinds = [...new Set(model.system.algae.map(({ kind }) => kind))]
  return [
    amount('nitrate', 'water.nitrate/N'),
    amount('phosphate', 'water.phosphate/P'),
    ...model.system.surfaces.flatMap((surface) =>
      kinds.map((kind): Seen => {
        const parts = patches.map((patch) => ({
          cover: coverOf(model, { surface: surface.id, kind, patch }),
          share: patchShare(surface, patch, model.facts),
        }))
        return {
          name: 'cover',
          of: (states, parameters) =>
            parts.reduce((sum, { cover, share }) => sum + share * cover(states, parameters), 0),
        }
      }),
    ),
  ]
}

export function runShare(
  run: BenchmarkRun,
  share: Share,
  integrator: IntegratorSettings = usualSettings,
): readonly Course[] {
  const all = seenIn(run)
  const question = { ...run, to: share.days, samples: daily(share.days), integrator }
  return pairs(membersOf(run, share)).flatMap((pair) =>
    simulateTogether(question, pair).map(({ samples, statistics }, m) => ({
      seen: all.map(({ of }) => Float64Array.from(samples, (states) => of(states, pair[m].parameters))),
      statistics,
    })),
  )
}
