import { grazer } from '@holdfast/facts'
import { quietly, type Running } from '@holdfast/inference'
import { withAlternatives } from './alternatives.ts'
import type { CrewAnswer, PlanIssue } from './answer.ts'
import { homeOf, judged } from './candidates.ts'
import { clashes, issueOf, type Made } from './clash.ts'
import { crewProgramme, type Learnt } from './crew-programme.ts'
import { type Demand, demandOf } from './demand.ts'
import { deeper } from './hands.ts'
import { learntFrom, looseOf, mindedOf } from './lessons.ts'
import { notToBeHad, unsolved } from './not-planned.ts'
import type { CrewQuestion } from './question.ts'
import { type Solver, type SolverSettings, usualSolving } from './solver.ts'
import { effectOf, told } from './told.ts'
import { type Setting, tried } from './tried.ts'
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
  const none = (...issues: readonly PlanIssue[]) => ({ status: 'none' as const, issues, barred })
  const forbids = waterForbids(present)
  if (forbids) return none(forbids)
  const there = system.animals.flatMap(({ taxon }) => (taxon !== undefined && grazer(taxon) ? [taxon] : []))
  const missing = notToBeHad(wishes, there, { candidates, barred })
  if (missing.length > 0) return none(...missing)
  const taxa = [...new Set([...there, ...candidates.map(({ animal }) => animal.taxon)])]
  const demand = demandOf(present, taxa)
  const minded = mindedOf(demand, facts)
  const setting: Setting = { present, wishes, system, home, facts, candidates, barred, demand, minded }
  let learnt = firstGuess(demand, facts.typical('crew_plan.lean'))
  let found: readonly PlanIssue[] = []
  for (let round = 1; ; round++) {
    onProgress(round / (rounds + 2))
    if (cancelled()) return none(unsolved('cancelled'))
    const made = crewProgramme({ ...setting, learnt })
    const solved = solver(made.programme, settings)
    if (solved.status === 'infeasible') {
      const madeOf: Made = (other) =>
        crewProgramme({ ...setting, ...judged(system, home, other, facts), wishes: other, learnt })
      const clash = clashes({ wishes, made: madeOf, facts, solver, settings })
      const issues = clash.length > 0 ? clash.map(issueOf) : [unsolved('no answer in time')]
      return { ...none(...issues, ...found), clashes: clash }
    }
    if (solved.status !== 'solved') return none(unsolved(solved.status))
    const one = tried(setting, made, solved, learnt)
    if (one.issues.length === 0) {
      onProgress((rounds + 1) / (rounds + 2))
      const [best, ...others] = withAlternatives(one, setting, learnt, solver, settings, cancelled)
      return {
        status: 'plan',
        ...told(setting, best),
        barred,
        alternatives: others.map((other) => told(setting, other)),
        effect: effectOf(setting, best),
      }
    }
    if (round === rounds) return { status: 'refused', ...told(setting, one), barred, alternatives: [] }
    found = one.issues.map(({ issue }) => issue)
    const deep = deeper(one.hands, looseOf(one.issues, one.trial), minded, facts)
    learnt = learntFrom(learnt, one, round >= openRounds, deep)
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
