import type { Stand } from '../accounts/index.ts'
import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { type Model, stateId, stateIndex } from '../assemble/model.ts'
import { coverOf } from '../derived/index.ts'
import type { IntegratorSettings, Statistics } from '../integrate/index.ts'
import { ledger } from '../ledger/index.ts'
import type { Ledger } from '../ledger-types.ts'
import type { Event } from '../log.ts'
import { type Mark, type Moment, simulate, timeline } from '../simulate/index.ts'
import { type Opening, startOf } from '../start/start.ts'
import type { System } from '../system.ts'

export interface RunQuestion {
  readonly system: System
  readonly days: number
  readonly opening?: Opening
  /** Days at which states are kept; every day where none are named. */
  readonly samples?: readonly number[]
  /** Days at which the books are closed; the first and the last where none are named. */
  readonly marks?: readonly number[]
  readonly events?: readonly Event[]
  /** Settings that change on the way, beside what log and routine say. */
  readonly moments?: readonly Moment[]
  /** Facts at other than their typical value, in the unit of the formulas. */
  readonly facts?: Readonly<Record<string, number>>
  /** States at other than what the opening makes of them, µmol (or cover). */
  readonly start?: Readonly<Record<string, number>>
  readonly integrator?: IntegratorSettings
}

/** One run of a system at typical parameters, and what tests ask of it. */
export interface Run {
  readonly model: Model
  readonly days: readonly number[]
  readonly parameters: Float64Array
  readonly samples: readonly Float64Array[]
  readonly end: Float64Array
  readonly statistics: Statistics
  readonly marks: readonly Mark[]
  /** From the first mark to the last. */
  readonly ledger: Ledger
  /** µmol of an account's atom, such as 'water.nitrate/N', at each sample. */
  readonly course: (id: string) => readonly number[]
  /** The same in µmol per litre of water. */
  readonly concentrations: (id: string) => readonly number[]
  /** The share of its patch that a stand covers, at each sample. */
  readonly cover: (stand: Stand) => readonly number[]
}

export function run(question: RunQuestion): Run {
  const { system, days } = question
  const model = assemble(system)
  const parameters = typicalParameters(model)
  for (const [fact, value] of Object.entries(question.facts ?? {}))
    for (const [k, parameter] of model.parameters.entries())
      if (parameter.fact === fact) parameters[k] = value
  const start = startOf(model, parameters, question.opening ?? { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }, 0)
  for (const [id, value] of Object.entries(question.start ?? {})) start[known(model, id)] = value
  const happens = timeline({ system, events: question.events ?? [], from: 0, to: days, asOf: 0 })
  const samples = question.samples ?? Array.from({ length: Math.floor(days) + 1 }, (_, day) => day)
  const simulation = simulate({
    model,
    parameters,
    start,
    from: 0,
    to: days,
    timeline: [...happens, ...(question.moments ?? [])].sort((a, b) => a.day - b.day),
    samples,
    marks: question.marks ?? [0, days],
    ...(question.integrator ? { integrator: question.integrator } : {}),
  })
  const course = (id: string): readonly number[] => {
    const index = known(model, id)
    return simulation.samples.map((states) => states[index])
  }
  const { marks } = simulation
  return {
    model,
    parameters,
    days: samples,
    samples: simulation.samples,
    end: simulation.end,
    statistics: simulation.statistics,
    marks,
    ledger: ledger(model, marks[0], marks[marks.length - 1]),
    course,
    cover: (stand) => {
      const of = coverOf(model, stand)
      return simulation.samples.map((states) => of(states, parameters))
    },
    concentrations: (id) => course(id).map((amount) => amount / model.volume_L),
  }
}

function known(model: Model, id: string): number {
  const index = stateIndex(model, id)
  if (index < 0) throw new Error(`No state "${id}". States: ${model.states.map(stateId).join(', ')}.`)
  return index
}

/** µmol that the rows of a ledger moved, picked by process, and by either end where one is named. */
export const moved = (
  books: Ledger,
  pick: { readonly process?: string; readonly atom: string; readonly from?: string; readonly to?: string },
): number =>
  books.rows
    .filter(
      (row) =>
        row.atom === pick.atom &&
        (pick.process === undefined || row.process === pick.process) &&
        (pick.from === undefined || row.from === pick.from) &&
        (pick.to === undefined || row.to === pick.to),
    )
    .reduce((sum, row) => sum + row.amount_umol, 0)

/** Switches off the loss that stands in for what is not modelled, where a test is about what is. */
export const nothingUnexplained = { 'unexplained.nitrate': 0, 'unexplained.phosphate': 0 } as const
