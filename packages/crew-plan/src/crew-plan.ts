import { quietly, type Running } from '@holdfast/inference'
import { withAlternatives } from './alternatives.ts'
import type { CrewAnswer, PlanIssue } from './answer.ts'
import { judged } from './candidates.ts'
import { clashes, issueOf, type Made } from './clash.ts'
import { crewProgramme } from './crew-programme.ts'
import { deeper } from './hands.ts'
import { withoutIdle } from './idle.ts'
import { learntFrom, looseOf, stands } from './lessons.ts'
import { unsolved } from './not-planned.ts'
import type { CrewQuestion } from './question.ts'
import { firstGuess, hindrances, settingOf } from './setting.ts'
import { type Solver, type SolverSettings, usualSolving } from './solver.ts'
import { effectOf, told } from './told.ts'
import { tried } from './tried.ts'

/** Rounds of planning and letting the plan live in the model before the last one is refused. */
export const rounds = 12
/** After so many rounds nobody new comes: from then on a plan only becomes smaller, until all are fed. */
export const openRounds = 4

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
  const setting = settingOf({ present, wishes })
  const { system, facts, home, barred, minded } = setting
  const none = (...issues: readonly PlanIssue[]) => ({ status: 'none' as const, issues, barred })
  const hindered = hindrances(setting)
  if (hindered.length > 0) return none(...hindered)
  let learnt = firstGuess(setting)
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
    if (stands(one, learnt) || (round === rounds && one.issues.length === 0)) {
      onProgress((rounds + 1) / (rounds + 2))
      const lean = withoutIdle(one, made, setting)
      const [best, ...others] = withAlternatives(lean, one.cost, setting, learnt, solver, settings, cancelled)
      return {
        status: 'plan',
        ...told(setting, best),
        barred,
        alternatives: others.map((other) => told(setting, other)),
        ...effectOf(setting, best),
      }
    }
    if (round === rounds) return { status: 'refused', ...told(setting, one), barred, alternatives: [] }
    found = one.issues.map(({ issue }) => issue)
    const deep = deeper(one.hands, looseOf(one.issues, one.trial), minded, facts)
    learnt = learntFrom(learnt, one, round >= openRounds, deep)
  }
}
