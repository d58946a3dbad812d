import { placeKey } from '@holdfast/ecosystem'
import { wantedKind } from '@holdfast/facts'
import type { HandWork, PlanIssue } from './answer.ts'
import type { Crew } from './crew-plan.ts'
import type { Learnt } from './crew-programme.ts'
import type { Demand } from './demand.ts'
import type { TrialRun } from './trial-run.ts'

/** A place that was not held is given so much more the next time. */
const moreEachRound = 2
/** Reserve used up from which animals are lost to hunger, as in the model. */
const starving = 0.5
/** Where somebody starved, so much of the lean food is reckoned with the next time. */
const thriftier = 0.85
/** A place of which less than this share is left to the hand must be held by the crew. */
const handShare = 0.2

/** An issue with the place or the taxon it is about. */
export interface Found {
  readonly about: string
  readonly issue: PlanIssue
}

/** Who starves and what is not held, when a crew lives in the model. */
export function issuesOf(
  { numbers, byHand }: Crew,
  trial: TrialRun,
  demand: Demand,
  mind: number,
): readonly Found[] {
  const starve = trial.crew
    .filter(({ taxon, hunger }) => hunger > starving && numbers.some(({ animal }) => animal.taxon === taxon))
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
  const toHand = new Set(byHand.filter(({ share }) => share > handShare).map(({ key }) => key))
  const loose = trial.held
    .filter((place) => {
      const today = demand.places.find(({ key }) => key === placeKey(place))
      return (
        today &&
        !wantedKind(place.kind) &&
        !toHand.has(today.key) &&
        place.cover > Math.max(mind, today.cover)
      )
    })
    .map(({ surface, patch, kind, cover }) => ({
      about: placeKey({ surface, patch, kind }),
      issue: {
        code: 'not held' as const,
        where: `${surface}, ${patch}`,
        got: `has ${Math.round(100 * cover)} % ${kind} after three months`,
        accepted: 'no more than today, or what nobody minds',
        next: 'Take it out by hand there, or let other animals come.',
      },
    }))
  return [...starve, ...loose]
}

/**
 * What the next plan is to heed: growth as it came out, fewer of who starved and less food for all, for mouths do
 * not share as kindly as a plan; or, where nobody starved, more for what was not held.
 *
 * @param closed  nobody new comes any more, so that the plan can only become smaller
 */
export function learntFrom(
  { more, fed, thrift }: Learnt,
  { numbers }: Crew,
  { lean, crew }: TrialRun,
  issues: readonly Found[],
  closed: boolean,
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
    closed,
    more:
      starved.length > 0 || closed
        ? more
        : new Map([
            ...more,
            ...about('not held').map((key) => [key, moreEachRound * (more.get(key) ?? 1)] as const),
          ]),
  }
}

/** What the hand takes where the crew that is fed does not hold a place: as much as grows there. */
export function untilHeld(issues: readonly Found[], { held }: TrialRun): readonly HandWork[] {
  const loose = new Set(issues.filter(({ issue }) => issue.code === 'not held').map(({ about }) => about))
  return held
    .filter((place) => loose.has(placeKey(place)))
    .map(({ surface, patch, kind, growth_g_d }) => ({
      surface,
      patch,
      kind,
      grams_dry_per_week: 7 * growth_g_d,
    }))
}
