/** What the bacteria on dosed carbon are short of. */
import { type Model, stateIndex } from '@holdfast/ecosystem'
import type { CaseFile } from '../case-file.ts'
import { presentOf } from './past-of-case.ts'

type Scarce = 'N' | 'P' | 'C'

/** The nutrient that most of the weighed members find scarcest today. */
export function limitingBacteria(file: CaseFile): Scarce {
  const { known } = presentOf(file)
  const { model, members, weights } = known
  const votes = new Map<Scarce, number>()
  members.forEach(({ parameters, states }, m) => {
    const scarcest = scarcestOf(model, parameters, states)
    votes.set(scarcest, (votes.get(scarcest) ?? 0) + (weights.of[m] ?? 0))
  })
  const [most] = [...votes].sort((a, b) => b[1] - a[1])
  return most?.[0] ?? 'C'
}

/** Each need from 0 (nothing) to 1 (plenty): the stores within their ends, and what carbon allows of growth. */
function scarcestOf(model: Model, parameters: Float64Array, states: Float64Array): Scarce {
  const of = (fact: string): number => parameters[model.parameters.findIndex((one) => one.fact === fact)] ?? 0
  const held = (id: string): number => states[stateIndex(model, id)] ?? 0
  const cells = held('water.bacteria/C')
  const store = (atom: 'N' | 'P'): number => {
    const [least, fed] = [of(`cd.quota_${atom}_least`), of(`cd.quota_${atom}_fed`)]
    return (held(`water.bacteria/${atom}`) / cells - least) / (fed - least)
  }
  const labile = held('water.labile/C') / model.volume_L
  const needs: readonly (readonly [Scarce, number])[] = [
    ['N', store('N')],
    ['P', store('P')],
    ['C', labile / (labile + of('cd.ks'))],
  ]
  return needs.reduce((scarcest, one) => (one[1] < scarcest[1] ? one : scarcest))[0]
}
