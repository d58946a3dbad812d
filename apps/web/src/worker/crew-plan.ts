import {
  crewPlan,
  homeOf,
  loadSolver,
  presentOfPast,
  untold,
  usualSolving,
  type Wishes,
  withRoomFor,
} from '@holdfast/crew-plan'
import { assemble } from '@holdfast/ecosystem'
import { explanations, type OutlookQuestion, type Past, type Running } from '@holdfast/inference'
import { type Purpose, purposeOf } from '@holdfast/reach'
import solver from 'highs/runtime?url'
import type { CrewTold } from './answers.ts'

export { withEverPresent } from '@holdfast/crew-plan'

/**
 * The crew plan for a past that is known; the solver is a file of ours, fetched when a plan is asked for.
 *
 * @param question  what the past was asked with
 * @param told  what the keeper told, without what grows in every tank
 */
export async function crewOfPast(
  past: Past,
  question: OutlookQuestion,
  told: OutlookQuestion,
  wishes: Wishes,
  running: Running,
): Promise<CrewTold> {
  const solve = await loadSolver(solver)
  const present = presentOfPast(past, question)
  const crew = crewPlan({ present, wishes }, solve, usualSolving, running)
  const planned = crew.status === 'none' ? [] : crew.crew
  const { system, facts } = past.model
  const purposes = planned.map(({ taxon }): [string, Purpose] => [taxon, purposeOf(taxon, system, facts)])
  const tried = withRoomFor(
    system,
    planned.map(({ taxon }) => taxon),
    homeOf(system, wishes.vessel).id,
  )
  return {
    crew,
    purposes: Object.fromEntries(purposes),
    untold: untold(told),
    worlds: present.worlds.length,
    processes: planned.length === 0 ? [] : explanations(assemble(tried, facts)),
  }
}
