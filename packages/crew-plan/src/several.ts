import { quietly, type Running } from '@holdfast/inference'
import type { CrewAnswer, PlanIssue } from './answer.ts'
import { openRounds, rounds } from './crew-plan.ts'
import { type CrewProgramme, crewProgramme, priceOf } from './crew-programme.ts'
import { deeper } from './hands.ts'
import { learntFrom, looseOf, stands } from './lessons.ts'
import { unsolved } from './not-planned.ts'
import { type Programme, ProgrammeBuilder } from './programme.ts'
import type { CrewQuestion } from './question.ts'
import { firstGuess, hindrances, settingOf } from './setting.ts'
import { type Solver, type SolverSettings, usualSolving } from './solver.ts'
import { told } from './told.ts'
import { type Setting, tried } from './tried.ts'

/** Animals that one system gives to another in place of a purchase; they are quarantined on the way. */
export interface Lent {
  readonly taxon: string
  /** Ids of systems. */
  readonly from: string
  readonly to: string
  readonly count: number
}

export interface SeveralAnswer {
  /** In the order of the questions; where one cannot be planned, none is. */
  readonly answers: readonly CrewAnswer[]
  readonly lent: readonly Lent[]
}

/**
 * One plan over several systems: who is too many in one may go to another before any is bought. Each crew is tried in
 * its own system, and the plan stands where all of them hold.
 */
export function crewPlanOfSeveral(
  questions: readonly CrewQuestion[],
  solver: Solver,
  settings: SolverSettings = usualSolving,
  { onProgress, cancelled }: Running = quietly,
): SeveralAnswer {
  const all = questions.map(settingOf)
  const none = (issuesOf: (setting: Setting) => readonly PlanIssue[]): SeveralAnswer => ({
    answers: all.map((setting) => ({ status: 'none', issues: issuesOf(setting), barred: setting.barred })),
    lent: [],
  })
  if (all.some((setting) => hindrances(setting).length > 0)) return none(hindrances)
  let learnt = all.map(firstGuess)
  for (let round = 1; ; round++) {
    onProgress(round / (rounds + 1))
    if (cancelled()) return none(() => [unsolved('cancelled')])
    const made = all.map((setting, s) => crewProgramme({ ...setting, learnt: learnt[s] }))
    const { programme, firsts, loans } = joined(made, all)
    const solved = solver(programme, settings)
    if (solved.status !== 'solved') {
      const why = solved.status === 'cancelled' ? 'cancelled' : 'no answer in time'
      return none(() => [unsolved(why)])
    }
    const lent = loans.flatMap(({ column, ...loan }) =>
      solved.values[column] > 0 ? [{ ...loan, count: solved.values[column] }] : [],
    )
    const each = made.map((one, s) => {
      const values = solved.values.slice(firsts[s], firsts[s] + one.programme.columns.length)
      const cost = one.programme.columns.reduce((sum, column, c) => sum + column.cost * values[c], 0)
      return tried(all[s], one, { ...solved, values, cost }, learnt[s])
    })
    if (round === rounds || each.every((one, s) => stands(one, learnt[s])))
      return {
        lent,
        answers: each.map((one, s) => ({
          status: one.issues.length === 0 ? 'plan' : 'refused',
          ...told(all[s], one, lentTo(all[s].system.id, lent)),
          barred: all[s].barred,
          alternatives: [],
        })),
      }
    learnt = each.map((one, s) => {
      const deep = deeper(one.hands, looseOf(one.issues, one.trial), all[s].minded, all[s].facts)
      return learntFrom(learnt[s], one, round >= openRounds, deep)
    })
  }
}

const lentTo = (system: string, lent: readonly Lent[]): ReadonlyMap<string, number> => {
  const sums = new Map<string, number>()
  for (const { taxon, to, count } of lent) if (to === system) sums.set(taxon, (sums.get(taxon) ?? 0) + count)
  return sums
}

/** All programmes side by side, with a column for each loan: it saves a price; the deed is counted where the animal leaves. */
function joined(made: readonly CrewProgramme[], all: readonly Setting[]) {
  const programme = new ProgrammeBuilder()
  const firsts = made.map((one) => appended(programme, one.programme))
  const loans: (Omit<Lent, 'count'> & { readonly column: number })[] = []
  const ins = new Map<number, [number, number][]>()
  for (const [a, giver] of made.entries())
    for (const { animal, there, stay } of giver.numbers) {
      const outs = made.flatMap((taker, b): [number, number][] => {
        const same = taker.numbers.find((one) => one.animal.taxon === animal.taxon)
        if (a === b || there === 0 || !same || taker.programme.columns[same.come].upper === 0) return []
        const cost = -priceOf(animal, all[b].facts)
        const column = programme.column({ upper: there, whole: true, cost })
        loans.push({ taxon: animal.taxon, from: all[a].system.id, to: all[b].system.id, column })
        const come = firsts[b] + same.come
        ins.set(come, [...(ins.get(come) ?? []), [column, 1]])
        return [[column, 1]]
      })
      if (outs.length > 0) programme.atMost(`given ${animal.taxon}`, [...outs, [firsts[a] + stay, 1]], there)
    }
  for (const [come, columns] of ins) programme.atMost('taken', [...columns, [come, -1]], 0)
  return { programme, firsts, loans }
}

/** @returns index of the first of its columns in the whole */
function appended(whole: ProgrammeBuilder, { columns, rows }: Programme): number {
  const first = whole.columns.length
  for (const column of columns) whole.column(column)
  for (const row of rows)
    whole.rows.push({ ...row, terms: row.terms.map(([column, factor]) => [first + column, factor] as const) })
  return first
}
