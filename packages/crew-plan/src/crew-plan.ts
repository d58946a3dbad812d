import { type Grazer, grazer } from '@holdfast/facts'
import type { CrewAnswer, HandWork, PlanIssue, Planned } from './answer.ts'
import { type Candidate, homeOf, judged } from './candidates.ts'
import { type CrewProgramme, crewProgramme, type Learnt } from './crew-programme.ts'
import { type Demand, demandOf } from './demand.ts'
import { issuesOf, learntFrom, untilHeld } from './lessons.ts'
import type { CrewQuestion } from './question.ts'
import { type Solved, type Solver, type SolverSettings, usualSolving } from './solver.ts'
import { type Step, stepsOf } from './steps.ts'
import { type Change, type TrialRun, trialRun } from './trial-run.ts'
import { waterForbids } from './water-check.ts'

/** Rounds of planning and letting the plan live in the model before the last one is told as it is. */
const rounds = 9
/** After so many rounds nobody new comes: from then on a plan only becomes smaller, until all are fed. */
const openRounds = 4

/** A solved programme in animals. */
export interface Crew {
  readonly numbers: readonly {
    readonly animal: Grazer
    readonly there: number
    readonly come: number
    readonly leave: number
  }[]
  readonly byHand: readonly (HandWork & { readonly key: string; readonly share: number })[]
  readonly steps: readonly Step[]
}

/**
 * The cheapest crew that holds what grows, as far as animals that may live there reach it, and starves nobody
 * when less grows. Each plan lives a year in the model; what it finds there corrects the next, until it holds.
 */
export function crewPlan(
  { present, wishes }: CrewQuestion,
  solver: Solver,
  settings: SolverSettings = usualSolving,
): CrewAnswer {
  const { system, facts } = present.model
  const home = homeOf(system, wishes.vessel)
  const { candidates, barred } = judged(system, home, wishes, facts)
  const forbids = waterForbids(present)
  if (forbids) return { status: 'none', issues: [forbids], barred }
  const there = system.animals.flatMap(({ taxon }) => (taxon !== undefined && grazer(taxon) ? [taxon] : []))
  const taxa = [...new Set([...there, ...candidates.map(({ animal }) => animal.taxon)])]
  const demand = demandOf(present, taxa)
  let learnt = firstGuess(demand, facts.typical('crew_plan.lean'))
  for (let round = 1; ; round++) {
    const made = crewProgramme({ system, home, facts, wishes, candidates, demand, learnt })
    const solved = solver(made.programme, settings)
    if (solved.status !== 'solved') return { status: 'none', issues: [unsolved(solved)], barred }
    const crew = crewOfSolution(made, solved.values, facts.typical('crew_plan.steps'))
    const trial = trialRun(present, changesOf(crew, present.day))
    const issues = issuesOf(crew, trial, demand, facts.typical('crew_plan.held'))
    const starves = issues.some(({ issue }) => issue.code === 'starves')
    if (issues.length === 0 || round === rounds || (round > openRounds && !starves))
      return {
        status: starves ? 'refused' : 'plan',
        proved: solved.proved,
        cost: solved.cost,
        crew: crew.numbers.map((one) =>
          planned(one, trial, candidates, facts.typical('crew.first_month_loss')),
        ),
        byHand: [
          ...crew.byHand.map(({ key: _key, share: _share, ...work }) => work),
          ...untilHeld(issues, trial),
        ],
        steps: crew.steps,
        barred,
        check: { crew: trial.crew, issues: issues.map(({ issue }) => issue) },
      }
    learnt = learntFrom(learnt, crew, trial, issues, round >= openRounds)
  }
}

const firstGuess = ({ places }: Demand, lean: number): Learnt => ({
  lean: new Map(places.map(({ key, growth_g_d }) => [key, lean * growth_g_d])),
  thrift: 1,
  closed: false,
  more: new Map(),
  fed: new Map(),
})

function crewOfSolution(
  { numbers, byHand }: CrewProgramme,
  values: readonly number[],
  apart_days: number,
): Crew {
  const chosen = numbers
    .map(({ animal, there, stay, come }) => ({
      animal,
      there,
      come: values[come],
      leave: there - values[stay],
    }))
    .filter(({ there, come }) => there + come > 0)
  const comers = chosen.filter(({ come }) => come > 0).map(({ animal, come }) => ({ animal, count: come }))
  return {
    numbers: chosen,
    steps: stepsOf(comers, apart_days),
    byHand: byHand
      .filter(({ column }) => values[column] > 1e-6)
      .map(({ place, column }) => ({
        key: place.key,
        surface: place.surface,
        patch: place.patch,
        kind: place.kind,
        grams_dry_per_week: 7 * values[column],
        share: values[column] / place.growth_g_d,
      })),
  }
}

const changesOf = ({ numbers, steps }: Crew, day: number): readonly Change[] => [
  ...numbers
    .filter(({ leave }) => leave > 0)
    .map(({ animal, leave }) => ({ day, taxon: animal.taxon, count: -leave })),
  ...steps.flatMap(({ after_days, animals }) => animals.map((one) => ({ day: day + after_days, ...one }))),
]

function planned(
  { animal, there, come, leave }: Crew['numbers'][number],
  trial: TrialRun,
  candidates: readonly Candidate[],
  firstMonthLoss: number,
): Planned {
  const order = Math.ceil(come / (1 - firstMonthLoss) - 1e-9)
  const { low, high } = animal.price_usd
  const left = trial.crew.find(({ taxon }) => taxon === animal.taxon)?.livingAfterYear ?? 0
  return {
    taxon: animal.taxon,
    tradeName: animal.tradeName,
    group: animal.group,
    there,
    come,
    leave,
    order,
    price_usd: { low: order * low, high: order * high },
    lostInYear: Math.max(0, there + come - leave - left),
    cautions: candidates.find((one) => one.animal.taxon === animal.taxon)?.cautions ?? [],
  }
}

function unsolved({ status }: Solved): PlanIssue {
  if (status === 'infeasible')
    return {
      code: 'limits clash',
      where: 'Plan',
      got: 'has limits that no crew can keep together',
      accepted: 'limits that leave room for what is there',
      next: 'Raise the most of one taxon or the budget, or give animals away first.',
    }
  return {
    code: status === 'cancelled' ? 'cancelled' : 'no answer in time',
    where: 'Plan',
    got: status === 'cancelled' ? 'was stopped' : 'was not found in time',
    accepted: '',
    next: 'Ask again with fewer animals on the list.',
  }
}
