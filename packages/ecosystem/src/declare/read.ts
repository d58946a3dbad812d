import type { FactsOfSystem } from '@holdfast/facts'
import type { Atom } from '../ledger-types.ts'
import type { Account, PlainState } from './account.ts'

/** What a formula may name, fixed or chosen by the instance (a feed, a patch, an animal). */
export type Chosen<I, T> = T | ((instance: I) => T)

/** What an instance has, or else what the facts of its system say is usual. */
export type ValueOf<I> = (instance: I, facts: FactsOfSystem) => number

/** A quantity that a formula reads. `unit` is what the formula sees. */
export type Read<I> =
  | {
      readonly read: 'amount'
      readonly account: Chosen<I, Account>
      readonly atom: Atom
      readonly unit: 'µmol'
    }
  | {
      readonly read: 'concentration'
      readonly account: Chosen<I, Account>
      readonly atom: Atom
      readonly unit: 'µmol L⁻¹'
    }
  | { readonly read: 'state'; readonly state: Chosen<I, PlainState>; readonly unit: string }
  | {
      readonly read: 'setting'
      readonly id: Chosen<I, string>
      readonly value: ValueOf<I>
      readonly unit: string
    }
  | {
      readonly read: 'gathered'
      readonly gather: string
      readonly key: (instance: I) => string
      readonly unit: string
    }

/** µmol of one atom in an account; what lies below zero by rounding reads as zero. */
export const amount = <I>(account: Chosen<I, Account>, atom: Atom): Read<I> => ({
  read: 'amount',
  account,
  atom,
  unit: 'µmol',
})

/** µmol per litre of system water. */
export const concentration = <I>(account: Chosen<I, Account>, atom: Atom): Read<I> => ({
  read: 'concentration',
  account,
  atom,
  unit: 'µmol L⁻¹',
})

export const state = <I>(chosen: Chosen<I, PlainState>, unit: string): Read<I> => ({
  read: 'state',
  state: chosen,
  unit,
})

/**
 * A number given by the description of the system. Its id is how an event or a lever changes it
 * later; two settings of one id are one setting.
 */
export const setting = <I>(id: Chosen<I, string>, unit: string, value: ValueOf<I>): Read<I> => ({
  read: 'setting',
  id,
  value,
  unit,
})

/** A sum over the instances of one process that share a key, worked out before any rate. */
export const gathered = <I>(gather: string, key: (instance: I) => string, unit: string): Read<I> => ({
  read: 'gathered',
  gather,
  key,
  unit,
})

/** Low, typical, high: a prior. */
export interface Band {
  readonly low: number
  readonly typical: number
  readonly high: number
}

/** A parameter of a formula: a fact, converted to the unit the formula uses. */
export interface ParameterRead<I> {
  readonly fact: Chosen<I, string>
  readonly unit: string
  /** What the keeper knows better than the catalogue, in the unit of the formula. */
  readonly known?: (instance: I) => Band | undefined
}

export const fact = <I>(
  id: Chosen<I, string>,
  unit: string,
  known?: (instance: I) => Band | undefined,
): ParameterRead<I> => (known ? { fact: id, unit, known } : { fact: id, unit })
