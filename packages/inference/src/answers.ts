import type { Atom, Day, Ledger, LedgerRow, Observation } from '@holdfast/ecosystem'
import type { Outlook } from './outlook-types.ts'

/**
 * A row of the ledger over the members of the ensemble: the mean, since means of balanced books balance,
 * and 5 and 95 %, µmol over the span.
 */
export interface BandedRow extends LedgerRow {
  readonly low_umol: number
  readonly high_umol: number
  /** The amount in each member, so that sums of rows keep what goes together. */
  readonly members: readonly number[]
}

export type Balance = Ledger['balances'][number] & {
  /** 5 % and 95 % of the change over the span, µmol. */
  readonly change_low_umol: number
  readonly change_high_umol: number
  /** The change in each member. */
  readonly changes: readonly number[]
}

export interface BandedLedger extends Ledger {
  readonly rows: readonly BandedRow[]
  readonly balances: readonly Balance[]
  /** Of the members. */
  readonly weights: readonly number[]
}

/** A fact as the derivation of a figure shows it. */
export interface FactUsed {
  readonly id: string
  /** Its name in the formula. */
  readonly name: string
  readonly title: string
  readonly low: number
  readonly typical: number
  readonly high: number
  readonly unit: string
  readonly source: string
  readonly provenance: string
}

/** A formula as declared, and with settings and typical values of facts put in. */
export interface FormulaShown {
  readonly formula: string
  readonly withValues: string
  /** The atoms whose amount it gives; absent where it is a part of other formulas. */
  readonly moves?: readonly Atom[]
}

/** How a process works, for the derivation of what it moved. */
export interface Explanation {
  readonly process: string
  readonly instance: string
  readonly title: string
  readonly says: string
  readonly formulas: readonly FormulaShown[]
  readonly facts: readonly FactUsed[]
  /** Accounts that it takes from or gives to. */
  readonly accounts: readonly string[]
}

export interface LedgerAnswer {
  readonly ledger: BandedLedger
  readonly members: number
  /** Titles of accounts for people, by id. */
  readonly accounts: Readonly<Record<string, string>>
  readonly processes: readonly Explanation[]
  /** Sentences for people: own values of facts that move nothing. */
  readonly remarks: readonly string[]
}

/** A reading with what its kit may be off by; the ends are those of a 90 % interval. */
export interface ReadingWithError {
  readonly reading: Observation
  readonly low: number
  readonly high: number
}

/** Where the corals want the water; low and high in the unit of the fan. */
export interface CoralBand {
  readonly quantity: 'nitrate' | 'phosphate'
  readonly low: number
  readonly high: number
  readonly fact: FactUsed
}

export interface OutlookAnswer {
  readonly outlook: Outlook
  readonly readings: readonly ReadingWithError[]
  readonly bands: readonly CoralBand[]
  readonly processes: readonly Explanation[]
}

export interface Span {
  readonly from: Day
  readonly to: Day
}
