import { needId } from '@holdfast/facts'
import { inSteps } from './crew.ts'
import { type CrewProgramme, goesBy } from './crew-programme.ts'
import { lived, type Setting, type Tried } from './tried.ts'

/** An animal that finds less than this share of what it needs among the algae does not live on them. */
const livesOn = 0.1

/**
 * Who comes, unasked for, and in the trial eats next to nothing of the algae: what the plan reckoned with did not
 * grow, or others were quicker.
 */
export function idleIn({ crew, trial }: Tried, { wishes, facts }: Setting): ReadonlySet<string> {
  const { liked = [] } = wishes
  return new Set(
    crew.numbers
      .filter(({ animal, there, come, leave }) => {
        const eats = trial.crew.find(({ taxon }) => taxon === animal.taxon)?.eats_g_d ?? 0
        const needs = (there + come - leave) * facts.typical(needId(animal.taxon))
        return come > 0 && eats < livesOn * needs && !liked.some((name) => goesBy(animal, name))
      })
      .map(({ animal }) => animal.taxon),
  )
}

/** The same plan without those that are idle in it, where all is held without them as well; else the plan itself. */
export function withoutIdle(one: Tried, { programme, numbers }: CrewProgramme, setting: Setting): Tried {
  const idle = idleIn(one, setting)
  if (idle.size === 0) return one
  const stay = one.crew.numbers
    .map((each) => (idle.has(each.animal.taxon) ? { ...each, come: 0 } : each))
    .filter(({ there, come }) => there + come > 0)
  const saved = one.crew.numbers
    .filter(({ animal }) => idle.has(animal.taxon))
    .reduce((sum, { animal, come }) => {
      const column = numbers.find((known) => known.animal.taxon === animal.taxon)?.come
      return sum + (column === undefined ? 0 : programme.columns[column].cost * come)
    }, 0)
  const crew = inSteps(stay, one.crew.byHand, setting.facts.typical('crew_plan.steps'))
  const leaner = lived(setting, crew, one.hands, { cost: one.cost - saved, proved: one.proved })
  return leaner.issues.length === 0 ? leaner : one
}
