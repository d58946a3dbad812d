import type { Day } from './log.ts'

export type Atom = 'N' | 'P' | 'C' | 'Si'

/** One flow of the ledger over a span: what a process moved from one account to another. */
export interface LedgerRow {
  readonly process: string
  /** Name of the instance where a process has several (a feed, a skimmer, a surface). */
  readonly instance: string
  readonly atom: Atom
  readonly from: string
  readonly to: string
  /** µmol over the whole span; net where the process goes both ways. */
  readonly amount_umol: number
}

/** Double-entry budget over a span. */
export interface Ledger {
  readonly from: Day
  readonly to: Day
  readonly rows: readonly LedgerRow[]
  /** Of every account, µmol at the start and at the end. */
  readonly balances: readonly {
    readonly account: string
    readonly atom: Atom
    readonly start_umol: number
    readonly end_umol: number
  }[]
  /** What the system has and no process covers yet. */
  readonly notModelled: readonly string[]
}
