import { type PlaceWeek, placeKey } from '@holdfast/ecosystem'
import { algaeKind, type FactsOfSystem, wantedKind } from '@holdfast/facts'
import type { HandWork, PlanIssue } from './answer.ts'
import type { Crew } from './crew.ts'
import type { Learnt } from './crew-programme.ts'
import type { Demand } from './demand.ts'
import type { Minded, Weekly } from './hands.ts'
import { patchWords } from './patch-words.ts'
import { starving, type TrialRun } from './trial-run.ts'
import type { Tried } from './tried.ts'
import { waterIssue } from './water-check.ts'

/** A place that was not held is given so much more the next time. */
const moreEachRound = 2
/** Where somebody starved, so much of the lean food is reckoned with the next time. */
const thriftier = 0.85

/** An issue with the place or the taxon it is about. */
export interface Found {
  readonly about: string
  readonly issue: PlanIssue
}

/**
 * Cover that may stand at a place after the plan: what nobody minds, and never less than stands there today. A film
 * as thin as a breath is what grazers live on; only what stands up from the ground is a nuisance at a tenth.
 */
export function mindedOf({ places }: Demand, { typical }: FactsOfSystem): Minded {
  const today = new Map(places.map(({ key, cover }) => [key, cover]))
  return (place) => {
    const mind = typical(
      place.height_mm < typical('crew_plan.short') ? 'crew_plan.held_short' : 'crew_plan.held',
    )
    return Math.max(mind, today.get(placeKey(place)) ?? 0)
  }
}

/**
 * Who of those that come starves, what is not held, and when the water is not fit for who comes, where a crew lives in the
 * model. Who is there already and starves is no reason against a plan: see `toFeedOf`.
 */
export function issuesOf(
  { numbers }: Crew,
  trial: TrialRun,
  minded: Minded,
  today: number,
): readonly Found[] {
  const starve = trial.crew
    .filter(
      ({ taxon, hunger }) =>
        hunger > starving && numbers.some(({ animal, come }) => come > 0 && animal.taxon === taxon),
    )
    .map(({ taxon, hunger }) => ({
      about: taxon,
      issue: {
        code: 'starves' as const,
        where: taxon,
        got: `uses up ${Math.round(100 * hunger)} % of its reserve within the year`,
        accepted: `at most ${100 * starving} %`,
        next: 'Keep fewer, feed them by hand, or leave more to grow.',
      },
    }))
  const loose = trial.held
    .filter((place) => !wantedKind(place.kind) && place.cover > minded(place))
    .map(({ surface, patch, kind, cover }) => ({
      about: placeKey({ surface, patch, kind }),
      issue: {
        code: 'not held' as const,
        where: `${surface}, ${patchWords[patch]}`,
        got: `has ${Math.round(100 * cover)} % ${algaeKind(kind).title} after three months`,
        accepted: 'no more than today, or what nobody minds',
        next: 'Let other animals come, or give it less light and less to live on.',
      },
    }))
  const foul = [...trial.arrivals].flatMap(([day, worlds]) => {
    const issue = waterIssue(trial.model, worlds, `Water on day ${Math.round(day - today)}`)
    return issue ? [{ about: 'water', issue }] : []
  })
  return [...starve, ...loose, ...foul]
}

/** More work for the hand in the trial than the keeper wants. */
export function tooMuchByHand(
  byHand: readonly HandWork[],
  most_g_week = Number.POSITIVE_INFINITY,
): readonly Found[] {
  const work = byHand.reduce((sum, { grams_dry_per_week }) => sum + grams_dry_per_week, 0)
  if (work <= most_g_week) return []
  return [
    {
      about: 'hand',
      issue: {
        code: 'too much by hand',
        where: 'Hand',
        got: `takes out ${work.toPrecision(2)} g of dry algae a week`,
        accepted: `at most ${most_g_week} g`,
        next: 'Allow more work by hand, or more kinds of animals.',
      },
    },
  ]
}

/**
 * What the next plan is to heed: growth as it came out, fewer of who starved and less food for all, for mouths do
 * not share as kindly as a plan; or, where nobody starved, more for what was not held.
 *
 * @param closed  nobody new comes any more, so that the plan can only become smaller
 * @param deeper  what the hand would take off then, to hold what this plan did not
 */
export function learntFrom(
  { more, fed, thrift, hands, enoughFor }: Learnt,
  { crew: { numbers }, trial: { lean, crew }, issues, toFeed }: Tried,
  closed: boolean,
  deeper: readonly Weekly[],
): Learnt {
  const about = (code: PlanIssue['code']): readonly string[] =>
    issues.filter(({ issue }) => issue.code === code).map((one) => one.about)
  const starved = about('starves')
  const lived = new Map(numbers.map(({ animal, there, come, leave }) => [animal.taxon, there + come - leave]))
  const left = (taxon: string): number => {
    const hunger = crew.find((fate) => fate.taxon === taxon)?.hunger ?? 0
    return Math.floor((lived.get(taxon) ?? 0) * (1 - hunger / 2))
  }
  const fewer = starved.map((taxon) => [taxon, left(taxon)] as const)
  return {
    lean,
    thrift: starved.length > 0 ? thrift * thriftier : thrift,
    fed: new Map([...(closed ? lived : fed), ...fewer]),
    enoughFor: new Map([
      ...toFeed.map(({ taxon, count, tooMany }) => [taxon, count - tooMany] as const),
      ...enoughFor,
    ]),
    closed,
    hands: closed ? deeper : hands,
    more:
      starved.length > 0 || closed
        ? more
        : new Map([
            ...more,
            ...about('not held').map((key) => [key, moreEachRound * (more.get(key) ?? 1)] as const),
          ]),
  }
}

/** Whether a plan holds and knew of everybody who has to be fed. */
export const stands = ({ issues, toFeed }: Tried, { enoughFor }: Learnt): boolean =>
  issues.length === 0 && toFeed.every(({ taxon }) => enoughFor.has(taxon))

/** The stands that are not held. */
export function looseOf(issues: readonly Found[], { held }: TrialRun): readonly PlaceWeek[] {
  const loose = new Set(issues.filter(({ issue }) => issue.code === 'not held').map(({ about }) => about))
  return held.filter((place) => loose.has(placeKey(place)))
}
