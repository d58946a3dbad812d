import type { Caution, Evidence } from '@holdfast/facts'

export type CauseKey =
  | 'poison'
  | 'curing'
  | 'cycling'
  | 'salinity'
  | 'dose-risen'
  | 'falling'
  | 'short'
  | 'source-water'
  | 'salt'
  | 'dose'
  | 'spent-medium'
  | 'dark-bed'
  | 'uncut-bed'
  | 'skimmer-off'
  | 'old-filter'
  | 'bodies'
  | 'overfed'
  | 'loaded-rock'
  | 'feed'
  | 'unreached'
  | 'hungry'
  | 'growth'

/** Why the water or a growth is as it is, as log and ledger show it. */
export interface Cause {
  readonly key: CauseKey
  /** A sentence for the keeper. */
  readonly says: string
}

export interface Rung {
  /** Key of the measure. */
  readonly measure: string
  readonly title: string
  /** The cause that it is for. */
  readonly for: CauseKey
  readonly cautions: readonly Caution[]
  readonly how: string
  readonly prepare: string
  readonly evidence: Evidence
  readonly effect: string
  readonly days: { readonly low: number; readonly high: number }
  /** The day before which it is not judged. */
  readonly judgedOn: number
  readonly seen: string
  readonly ends: string
  /** What ends the waiting before its day. */
  readonly stop?: string
  readonly risks: string
  /** Animals that do it and fit here. */
  readonly animals: readonly { readonly taxon: string; readonly tradeName: string }[]
  readonly source: string
}

/** A measure that would do harm here, or has nothing to act on. */
export interface LeftOut {
  readonly measure: string
  readonly title: string
  readonly because: string
}

export interface LadderAnswer {
  /** The day on which one looks. */
  readonly day: number
  /** Kind of algae that the ladder is for, if any. */
  readonly kind?: string
  readonly title?: string
  /** The gravest and then the largest first. */
  readonly causes: readonly Cause[]
  /** In the order in which they are climbed, one at a time. */
  readonly rungs: readonly Rung[]
  readonly leftOut: readonly LeftOut[]
  /** Of all rungs and of the water, the gravest first. */
  readonly cautions: readonly Caution[]
}
