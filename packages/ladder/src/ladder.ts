import { type Caution, type Control, cautions, controlsOf, measure } from '@holdfast/facts'
import type { LadderAnswer, LeftOut, Rung } from './answer.ts'
import type { Found, Step } from './causes/found.ts'
import { causesOf } from './causes/index.ts'
import { fitting } from './fitting.ts'
import type { LadderQuestion } from './question.ts'
import { refusal } from './refusals.ts'
import { type Standing, standingOf } from './standing.ts'

/** A measure that stands for another: where the first is on the ladder, the second says nothing new. */
const alike: Readonly<Record<string, string>> = { hand_removal_siphon: 'hand_removal' }

/** Animals do these. */
const byAnimals: readonly string[] = ['crew_add', 'place_grazer_inside']

/**
 * What to do about the water and the growth of a system, in order: for the gravest and then the largest cause first,
 * within a cause the gentlest first. What would do harm here is left out with its reason.
 */
export function ladder(question: LadderQuestion): LadderAnswer {
  const standing = standingOf(question)
  const causes = causesOf(standing)
  const rungs: Rung[] = []
  const leftOut: LeftOut[] = []
  for (const cause of causes)
    for (const proposed of proposalsOf(cause, standing)) {
      const { measure: key } = proposed
      const taken = (list: readonly { readonly measure: string }[]): boolean =>
        list.some((one) => one.measure === key || (alike[key] !== undefined && one.measure === alike[key]))
      if (taken(rungs) || taken(leftOut)) continue
      const made = rungOf(cause, proposed, standing)
      if ('because' in made) leftOut.push(made)
      else rungs.push(made)
    }
  const { meant } = standing
  return {
    day: standing.day,
    ...(meant === undefined ? {} : { kind: meant.kind, title: meant.title }),
    causes: causes.map(({ key, says }) => ({ key, says })),
    rungs,
    leftOut,
    cautions: allOf(rungs, causes, standing),
  }
}

interface Proposal {
  readonly measure: string
  readonly days?: Step['days']
  readonly control?: Control
}

/** Of a growth the controls of its kind, of another cause its steps. */
function proposalsOf({ key, steps }: Found, standing: Standing): readonly Proposal[] {
  if (key !== 'growth') return steps.map((step) => (typeof step === 'string' ? { measure: step } : step))
  const { kind = '', finer } = standing.meant ?? {}
  return controlsOf(kind)
    .filter(({ onlyFor, notFor }) =>
      finer === undefined ? onlyFor === undefined : (onlyFor?.includes(finer) ?? !notFor?.includes(finer)),
    )
    .map((control) => ({ measure: control.measure, control }))
    .toSorted((a, b) => Number(hasWorked(b, standing)) - Number(hasWorked(a, standing)))
}

function hasWorked({ measure: key, control }: Proposal, { question: { worked } }: Standing): boolean {
  const names = [key, measure(key).title, control?.title].map((name) => name?.toLowerCase())
  return worked !== undefined && names.includes(worked.trim().toLowerCase())
}

function rungOf(
  { key: cause }: Found,
  { measure: key, days, control }: Proposal,
  standing: Standing,
): Rung | LeftOut {
  const general = measure(key)
  const told = { ...general, ...control }
  const no = refusal(key, standing)
  if (no !== undefined) return { measure: key, title: told.title, because: no }
  const fits = byAnimals.includes(key) ? fitting(standing, standing.meant?.kind, control?.animals) : undefined
  if (fits?.because !== undefined) return { measure: key, title: told.title, because: fits.because }
  const time = days ?? told.days
  const { title, how, evidence, effect, risks, source, prepare, seen, ends, stop } = told
  return {
    measure: key,
    title,
    for: cause,
    cautions: minded([...general.cautions, ...(control?.cautions ?? [])]),
    how,
    prepare,
    evidence,
    effect,
    days: time,
    judgedOn: standing.day + time.high,
    seen,
    ends,
    ...(stop === undefined ? {} : { stop }),
    risks,
    animals: fits?.animals ?? [],
    source,
  }
}

const minded = (keys: readonly string[]): readonly Caution[] =>
  cautions().filter(({ key }) => keys.includes(key))

/** Of the rungs, and of what the water lacks or holds whatever is done. */
function allOf(
  rungs: readonly Rung[],
  causes: readonly Found[],
  { levels, poison, cycleOpen, facts, meant }: Standing,
): readonly Caution[] {
  const ofWater = [
    ...(meant?.handsOff ? ['palytoxin', 'hot_rock'] : []),
    ...(levels.nitrate.isShort ? ['nitrate_too_low_for_corals'] : []),
    ...(levels.phosphate.isShort ? ['phosphate_too_low_for_corals'] : []),
    ...(poison > facts.typical('crew_plan.ammonia') || cycleOpen ? ['ammonia_toxic'] : []),
    ...causes.flatMap(({ cautions: minding = [] }) => minding),
  ]
  return minded([...rungs.flatMap((rung) => rung.cautions.map(({ key }) => key)), ...ofWater])
}
