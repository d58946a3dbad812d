import { needLeft } from '@holdfast/ecosystem'
import type { ToFeed } from './answer.ts'
import type { Crew } from './crew.ts'
import type { Demand } from './demand.ts'
import { starving, type TrialRun } from './trial-run.ts'
import type { Setting } from './tried.ts'

/**
 * Animals that live there already, stay, and run short within the year: no reason to do without what a plan mends,
 * but they are to be fed by hand or to find another home. Nobody of a kind that comes is told here: such a plan
 * is refused.
 */
export function toFeedOf(
  { numbers }: Crew,
  { crew, eatenWhenLean_g_d }: TrialRun,
  { system, facts, demand }: Pick<Setting, 'system' | 'facts'> & { readonly demand: Pick<Demand, 'intakes'> },
): readonly ToFeed[] {
  return numbers.flatMap(({ animal, there, come, leave }): ToFeed[] => {
    const { taxon, tradeName } = animal
    const count = there - leave
    const fate = crew.find((one) => one.taxon === taxon)
    if (come > 0 || count <= 0 || fate === undefined || fate.hunger <= starving) return []
    const each = needLeft(taxon, system, facts) - (demand.intakes.get(taxon)?.detritus_g_d ?? 0)
    const short_g_d = Math.max(0, count * each - (eatenWhenLean_g_d.get(taxon) ?? 0))
    return [
      {
        taxon,
        tradeName,
        count,
        g_week: 7 * short_g_d,
        tooMany: Math.min(count, Math.ceil(short_g_d / Math.max(each, 1e-9))),
        within_days: 30 * (fate.months.findIndex((used) => used > starving) + 1) || 365,
      },
    ]
  })
}
