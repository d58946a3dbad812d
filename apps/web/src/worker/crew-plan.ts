import { crewPlan, loadSolver, presentOfPast, usualSolving, type Wishes } from '@holdfast/crew-plan'
import type { OutlookQuestion, Past, Running } from '@holdfast/inference'
import { type Purpose, purposeOf } from '@holdfast/reach'
import solver from 'highs/runtime?url'
import type { CrewTold } from './answers.ts'

/** The crew plan for a past that is known; the solver is a file of ours, fetched when a plan is asked for. */
export async function crewOfPast(
  past: Past,
  question: OutlookQuestion,
  wishes: Wishes,
  running: Running,
): Promise<CrewTold> {
  const solve = await loadSolver(solver)
  const crew = crewPlan({ present: presentOfPast(past, question), wishes }, solve, usualSolving, running)
  const planned = crew.status === 'none' ? [] : crew.crew
  const { system, facts } = past.model
  const purposes = planned.map(({ taxon }): [string, Purpose] => [taxon, purposeOf(taxon, system, facts)])
  return { crew, purposes: Object.fromEntries(purposes), processes: [] }
}
