import type { PlanIssue } from './answer.ts'
import { homeOf, judged } from './candidates.ts'
import type { Learnt } from './crew-programme.ts'
import { demandOf } from './demand.ts'
import { mindedOf } from './lessons.ts'
import { notToBeHad } from './not-planned.ts'
import type { CrewQuestion, Present } from './question.ts'
import type { Setting } from './tried.ts'
import { waterForbids } from './water-check.ts'

/** Grazers that the description of the system names. */
const named = ({ model }: Present): readonly string[] =>
  model.system.animals.flatMap(({ taxon }) =>
    taxon !== undefined && model.facts.grazer(taxon) ? [taxon] : [],
  )

/** What a question asks, looked at once: who may come, what grows, what may stand. */
export function settingOf({ present, wishes }: CrewQuestion): Setting {
  const { system, facts } = present.model
  const home = homeOf(system, wishes.vessel)
  const { candidates, barred } = judged(system, home, wishes, facts)
  const taxa = [...new Set([...named(present), ...candidates.map(({ animal }) => animal.taxon)])]
  const demand = demandOf(present, taxa, home.id)
  return { present, wishes, system, home, facts, candidates, barred, demand, minded: mindedOf(demand, facts) }
}

/** What forbids any plan: water that is not fit, or a wish for what is not to be had. */
export function hindrances({ present, wishes, candidates, barred, facts }: Setting): readonly PlanIssue[] {
  const forbids = waterForbids(present)
  return forbids ? [forbids] : notToBeHad(wishes, named(present), { candidates, barred }, facts)
}

/** Before a plan has been tried. */
export const firstGuess = ({ demand: { places }, facts }: Setting): Learnt => ({
  lean: new Map(places.map(({ key, growth_g_d }) => [key, facts.typical('crew_plan.lean') * growth_g_d])),
  thrift: 1,
  closed: false,
  more: new Map(),
  fed: new Map(),
  enoughFor: new Map(),
  hands: [],
})
