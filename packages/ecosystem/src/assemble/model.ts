import type { CompiledProcess } from 'virtual:holdfast-kernel'
import type { FactsOfSystem } from '@holdfast/facts'
import type { Account, Band, PlainState, Process } from '../declare/index.ts'
import type { Atom } from '../ledger-types.ts'
import type { System } from '../system.ts'

/** One entry of the state vector: the µmol of an atom in an account, or a state without atoms. */
export type StateEntry =
  | { readonly kind: 'atoms'; readonly account: Account; readonly atom: Atom }
  | { readonly kind: 'plain'; readonly state: PlainState }

/** One flow or rate that a model works out; indexes into the state vector, -1 for none. */
export interface Flux {
  readonly process: Process
  readonly instance: string
  readonly atom: Atom | null
  readonly from: number
  readonly to: number
  readonly bothWays: boolean
}

export interface Parameter {
  /** `fact`, or `fact of instance` where the keeper knows a band of their own. */
  readonly id: string
  readonly fact: string
  /** Unit of the formula, in which the vector of parameters is. */
  readonly unit: string
  readonly band: Band
  /** From the unit of the fact to that of the formula; 1 where the keeper gave the band. */
  readonly factor: number
  /** True where the description of the system gives the band. */
  readonly known: boolean
}

/** All instances of one process, bound to the vectors. */
export interface Block {
  readonly process: Process
  readonly compiled: CompiledProcess
  readonly names: readonly string[]
  readonly instances: readonly unknown[]
  /** Indexes of the inputs, instance after instance. */
  readonly inputs: Int32Array
  /** Indexes of the gathered sums that instances add to. */
  readonly gathers: Int32Array
  readonly firstFlux: number
}

/** A system turned into equations: fixed accounts, settings, parameters and flows. */
export interface Model {
  readonly system: System
  /** What its parameters were taken from. */
  readonly facts: FactsOfSystem
  /** Ids of the facts that its parameters, settings and instances were taken from. */
  readonly factsAsked: ReadonlySet<string>
  readonly states: readonly StateEntry[]
  readonly settings: { readonly ids: readonly string[]; readonly values: Float64Array }
  readonly parameters: readonly Parameter[]
  readonly gathered: number
  readonly blocks: readonly Block[]
  readonly fluxes: readonly Flux[]
  /** Events, by the id of their declaration; their fluxes are counted after those of the processes. */
  readonly events: ReadonlyMap<string, Block>
  readonly eventFluxes: readonly Flux[]
  /** What the system has and no process covers yet. */
  readonly notModelled: readonly string[]
  readonly volume_L: number
}

export const stateId = (entry: StateEntry): string =>
  entry.kind === 'atoms' ? `${entry.account.id}/${entry.atom}` : entry.state.id

/** Index of an account's atom in the state vector, or -1. */
export function stateIndex(model: Pick<Model, 'states'>, id: string): number {
  return model.states.findIndex((entry) => stateId(entry) === id)
}

export function settingIndex(model: Model, id: string): number {
  return model.settings.ids.indexOf(id)
}
