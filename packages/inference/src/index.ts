export type * from './answers.ts'
export { explanations } from './explain.ts'
export type { InRounds } from './in-rounds.ts'
export { readingInterval } from './kit.ts'
export { ledgerInRounds, ledgerOf } from './ledger-of.ts'
export {
  type Bookkeeper,
  bookkeepersOf,
  bookkeeping,
  isLong,
  longLedgerOf,
  recentOf,
  shareOfFitting,
} from './long-ledger.ts'
export { drawMember, type Scores } from './members.ts'
export { openingOn } from './opening.ts'
export { type Course, futures, outlook, outlookFrom, outlookOf, type Present } from './outlook.ts'
export type * from './outlook-types.ts'
export { type Member, modelOf, type Past, past, pastInRounds } from './past.ts'
export { weightedQuantiles } from './quantiles.ts'
export { resampled } from './resampled.ts'
export { restsOn } from './rests-on.ts'
export { quietly, type Running, stopped } from './running.ts'
export {
  type FactMoves,
  type Sensitivity,
  type SensitivityAnswer,
  type SensitivityQuestion,
  sensitivity,
} from './sensitivity/sensitivity.ts'
export { surveyed } from './surveyed.ts'
export { type Weights, weigh } from './weights.ts'
