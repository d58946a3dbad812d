import type { FactsOfSystem } from '@holdfast/facts'
import type { Atom } from '../ledger-types.ts'
import type { System } from '../system.ts'
import type { Account, PlainState } from './account.ts'
import type { Chosen, ParameterRead, Read } from './read.ts'

/** One flow of one atom; with `bothWays` the rate may be negative and then flows back. */
export interface Move<I> {
  readonly kind: 'move'
  readonly atom: Atom
  readonly from: Chosen<I, Account>
  readonly to: Chosen<I, Account>
  readonly rate: string
  readonly bothWays: boolean
}

/** One flow divided among several accounts by shares; the last takes the rest, so that they sum to one. */
export interface Split<I> {
  readonly kind: 'split'
  readonly atom: Atom
  readonly from: Chosen<I, Account>
  readonly rate: string
  readonly into: readonly { readonly to: Chosen<I, Account>; readonly share: string }[]
}

/** All atoms of an account leave in proportion, as share per day (or as share, in an event). */
export interface Carry<I> {
  readonly kind: 'carry'
  readonly from: Chosen<I, Account>
  readonly to: Chosen<I, Account>
  readonly atoms: readonly Atom[]
  readonly rate: string
}

/** The rate of a state without atoms; nothing where the instance has none. */
export interface Change<I> {
  readonly kind: 'change'
  readonly state: Chosen<I, PlainState | undefined>
  readonly rate: string
}

export type Transfer<I> = Move<I> | Split<I> | Carry<I> | Change<I>

export const move = <I>(t: Omit<Move<I>, 'kind' | 'bothWays'>): Move<I> => ({
  kind: 'move',
  bothWays: false,
  ...t,
})
export const exchange = <I>(t: Omit<Move<I>, 'kind' | 'bothWays'>): Move<I> => ({
  kind: 'move',
  bothWays: true,
  ...t,
})
export const split = <I>(t: Omit<Split<I>, 'kind'>): Split<I> => ({ kind: 'split', ...t })
export const carry = <I>(t: Omit<Carry<I>, 'kind'>): Carry<I> => ({ kind: 'carry', ...t })
export const change = <I>(t: Omit<Change<I>, 'kind'>): Change<I> => ({ kind: 'change', ...t })

/** A sum over instances that share a key, such as the food within reach of an animal. */
export interface Gather<I> {
  readonly key: (instance: I) => string
  readonly sum: string
  readonly unit: string
}

/**
 * A process declares what it reads, by which formula, and which atoms it moves from where to where.
 * Nothing else is written: right-hand side, ledger, units, docs and tests are made from it.
 */
export interface Process<I = unknown> {
  readonly id: string
  readonly title: string
  /** One or two sentences for people. */
  readonly says: string
  /** Key of the list of sources, or 'mass balance'. */
  readonly source: string
  /** The instances that this system has; none, and the process is not there. */
  readonly each: (system: System, facts: FactsOfSystem) => readonly Named<I>[]
  readonly reads: Readonly<Record<string, Read<I>>>
  readonly parameters: Readonly<Record<string, ParameterRead<I>>>
  /** Sums made before the rates, by name. */
  readonly gathers?: Readonly<Record<string, Gather<I>>>
  /** Named parts of the formulas, in the order in which they use each other. */
  readonly terms?: Readonly<Record<string, { readonly is: string; readonly unit: string }>>
  readonly transfers: readonly Transfer<I>[]
  /**
   * Set where rates change over days and there are many of them: they are worked out a few times a day, and
   * the other processes in short steps between.
   */
  readonly slow?: true
  /** Set where this is an event: then a rate is an amount (µmol) or a share at an instant. */
  readonly event?: true
}

export interface Named<I> {
  readonly name: string
  readonly of: I
}

/**
 * The one place where an instance's type is forgotten: a list of processes holds many kinds of
 * instance, and only a process reads its own.
 */
export function process<I>(declaration: Process<I>): Process {
  return declaration as unknown as Process
}

/** A process that a system has once. */
export const once = (happens: boolean): readonly Named<undefined>[] =>
  happens ? [{ name: '', of: undefined }] : []
