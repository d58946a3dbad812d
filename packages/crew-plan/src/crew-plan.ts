import { grazer } from '@holdfast/facts'
import { quietly, type Running } from '@holdfast/inference'
import type { CrewAnswer, PlanIssue, Planned } from './answer.ts'
import { type Candidate, homeOf, type Judged, judged } from './candidates.ts'
import { clashes, issueOf, type Made } from './clash.ts'
import { type Crew, changesOf, crewOfSolution } from './crew.ts'
import { crewProgramme, goesBy, type Learnt } from './crew-programme.ts'
import { type Demand, demandOf } from './demand.ts'
import { deeper, largest, takenBy, weeklyOf } from './hands.ts'
import { issuesOf, learntFrom, looseOf, mindedOf, tooMuchByHand } from './lessons.ts'
import type { CrewQuestion, Wishes } from './question.ts'
import { type Solver, type SolverSettings, usualSolving } from './solver.ts'
import { type TrialRun, trialRun } from './trial-run.ts'
import { waterForbids } from './water-check.ts'

/** Rounds of planning and letting the plan live in the model before the last one is refused. */
const rounds = 12
/** After so many rounds nobody new comes: from then on a plan only becomes smaller, until all are fed. */
const openRounds = 4

/**
 * The cheapest crew that holds what grows, as far as animals that may live there reach it, and starves nobody
 * when less grows. Each plan lives a year in the model, with the hand's work in it; what it finds there corrects the
 * next, until it holds. A plan that does not hold is told as refused, with the reasons.
 */
export function crewPlan(
  { present, wishes }: CrewQuestion,
  solver: Solver,
  settings: SolverSettings = usualSolving,
  { onProgress, cancelled }: Running = quietly,
): CrewAnswer {
  const { system, facts } = present.model
  const home = homeOf(system, wishes.vessel)
  const { candidates, barred } = judged(system, home, wishes, facts)
  const forbids = waterForbids(present)
  if (forbids) return { status: 'none', issues: [forbids], barred }
  const there = system.animals.flatMap(({ taxon }) => (taxon !== undefined && grazer(taxon) ? [taxon] : []))
  const missing = notToBeHad(wishes, there, { candidates, barred })
  if (missing.length > 0) return { status: 'none', issues: missing, barred }
  const taxa = [...new Set([...there, ...candidates.map(({ animal }) => animal.taxon)])]
  const demand = demandOf(present, taxa)
  const minded = mindedOf(demand, facts)
  let learnt = firstGuess(demand, facts.typical('crew_plan.lean'))
  let found: readonly PlanIssue[] = []
  for (let round = 1; ; round++) {
    onProgress(round / (rounds + 1))
    if (cancelled()) return { status: 'none', issues: [unsolved('cancelled')], barred }
    const made = crewProgramme({ system, home, facts, wishes, candidates, demand, learnt })
    const solved = solver(made.programme, settings)
    if (solved.status === 'infeasible') {
      const madeOf: Made = (other) =>
        crewProgramme({
          ...{ system, home, facts, demand, learnt, wishes: other },
          candidates: judged(system, home, other, facts).candidates,
        })
      const clash = clashes({ wishes, made: madeOf, facts, solver, settings })
      const issues = clash.length > 0 ? clash.map(issueOf) : [unsolved('no answer in time')]
      return { status: 'none', issues: [...issues, ...found], barred, clashes: clash }
    }
    if (solved.status !== 'solved') return { status: 'none', issues: [unsolved(solved.status)], barred }
    const crew = crewOfSolution(made, solved.values, facts.typical('crew_plan.steps'))
    const hands = largest([...learnt.hands, ...weeklyOf(crew.byHand, minded, facts)])
    const trial = trialRun(present, changesOf(crew, present.day), hands)
    const byHand = takenBy(hands, trial.held)
    const issues = [
      ...issuesOf(crew, trial, minded, present.day),
      ...tooMuchByHand(byHand, wishes.byHandMost_g_week),
    ]
    if (issues.length === 0 || round === rounds)
      return {
        status: issues.length === 0 ? 'plan' : 'refused',
        proved: solved.proved,
        cost: solved.cost,
        crew: crew.numbers.map((one) =>
          planned(one, trial, candidates, facts.typical('crew.first_month_loss')),
        ),
        byHand,
        steps: crew.steps,
        barred,
        check: { crew: trial.crew, issues: issues.map(({ issue }) => issue) },
      }
    found = issues.map(({ issue }) => issue)
    const deep = deeper(hands, looseOf(issues, trial), minded, facts)
    learnt = learntFrom(learnt, crew, trial, issues, round >= openRounds, deep)
  }
}

const firstGuess = ({ places }: Demand, lean: number): Learnt => ({
  lean: new Map(places.map(({ key, growth_g_d }) => [key, lean * growth_g_d])),
  thrift: 1,
  closed: false,
  more: new Map(),
  fed: new Map(),
  hands: [],
})

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

function unsolved(status: 'no answer in time' | 'cancelled'): PlanIssue {
  return {
    code: status,
    where: 'Plan',
    got: status === 'cancelled' ? 'was stopped' : 'was not found in time',
    accepted: '',
    next: 'Ask again with fewer animals on the list.',
  }
}

/** What is asked for and neither lives there nor may come, with what bars the first of it. */
function notToBeHad(
  { liked = [] }: Wishes,
  there: readonly string[],
  { candidates, barred }: Judged,
): readonly PlanIssue[] {
  const may = [...there.flatMap((taxon) => grazer(taxon) ?? []), ...candidates.map(({ animal }) => animal)]
  return liked
    .filter((name) => !may.some((animal) => goesBy(animal, name)))
    .map((name) => {
      const bar = barred.find(({ taxon }) => {
        const animal = grazer(taxon)
        return animal && goesBy(animal, name)
      })
      return {
        code: 'not to be had',
        where: name,
        got: bar === undefined ? 'is no animal of the catalogue' : `is not to come: ${bar.why}`,
        accepted: 'a taxon or group that may live there',
        next: 'Take it off the list of those you like.',
      }
    })
}
