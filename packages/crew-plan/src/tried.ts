import type { System, Vessel } from '@holdfast/ecosystem'
import type { FactsOfSystem } from '@holdfast/facts'
import type { HandWork, ToFeed } from './answer.ts'
import type { Judged } from './candidates.ts'
import { type Crew, changesOf, crewOfSolution } from './crew.ts'
import type { CrewProgramme, Learnt } from './crew-programme.ts'
import type { Demand } from './demand.ts'
import { largest, type Minded, takenBy, type Weekly, weeklyOf } from './hands.ts'
import { type Found, issuesOf, tooMuchByHand } from './lessons.ts'
import type { CrewQuestion } from './question.ts'
import type { Solved } from './solver.ts'
import { toFeedOf } from './to-feed.ts'
import { type TrialRun, trialRun } from './trial-run.ts'

/** What all rounds of a plan have in common. */
export interface Setting extends CrewQuestion, Judged {
  readonly system: System
  readonly home: Vessel
  readonly facts: FactsOfSystem
  readonly demand: Demand
  readonly minded: Minded
}

/** A crew that has lived a year in the model, with the hand's work at its side. */
export interface Tried {
  readonly crew: Crew
  /** Price, charges and hand of a year, US dollars. */
  readonly cost: number
  readonly proved: boolean
  readonly hands: readonly Weekly[]
  readonly byHand: readonly HandWork[]
  readonly toFeed: readonly ToFeed[]
  readonly trial: TrialRun
  readonly issues: readonly Found[]
}

/** Lets the crew of a solved programme live a year in the model. */
export function tried(
  setting: Setting,
  made: CrewProgramme,
  { values, cost, proved }: Extract<Solved, { readonly status: 'solved' }>,
  learnt: Learnt,
): Tried {
  const { facts, minded } = setting
  const crew = crewOfSolution(made, values, facts.typical('crew_plan.steps'))
  const hands = largest([...learnt.hands, ...weeklyOf(crew.byHand, minded, facts)])
  return lived(setting, crew, hands, { cost: cost + made.offset, proved })
}

/** Lets a crew live a year in the model, with what the hand takes off each week. */
export function lived(
  setting: Setting,
  crew: Crew,
  hands: readonly Weekly[],
  { cost, proved }: Pick<Tried, 'cost' | 'proved'>,
): Tried {
  const { present, wishes, minded, home } = setting
  const trial = trialRun(present, changesOf(crew, present.day), hands, home.id)
  const byHand = takenBy(hands, trial.held)
  return {
    crew,
    cost,
    proved,
    hands,
    byHand,
    toFeed: toFeedOf(crew, trial, setting),
    trial,
    issues: [
      ...issuesOf(crew, trial, minded, present.day),
      ...tooMuchByHand(byHand, wishes.byHandMost_g_week),
    ],
  }
}
