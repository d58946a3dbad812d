import { stateId } from '../assemble/model.ts'
import type { Atom } from '../ledger-types.ts'
import type { Run } from './run.ts'

export const atoms: readonly Atom[] = ['N', 'P', 'C', 'Si']

/** Everything there is of an atom, inside and outside, relative to the largest account: it must not move. */
export function drift({ model, marks, end }: Run, atom: Atom): number {
  const own = model.states.flatMap((state, k) => (state.kind === 'atoms' && state.atom === atom ? [k] : []))
  const total = (states: Float64Array): number => own.reduce((sum, k) => sum + states[k], 0)
  const scale = Math.max(...own.map((k) => Math.abs(end[k])), 1)
  const first = total(marks[0].states)
  return Math.max(...marks.map(({ states }) => Math.abs(total(states) - first))) / scale
}

/** Accounts inside that a sample of the run shows below zero; there must be none. */
export function belowZero({ model, samples }: Run): readonly string[] {
  return model.states.flatMap((state, k) => {
    if (state.kind === 'atoms' && state.account.side === 'outside') return []
    const least = Math.min(...samples.map((states) => states[k]))
    return least < 0 ? [`${stateId(state)}: ${least}`] : []
  })
}
