export type * from './answers.ts'
export { readingInterval } from './kit.ts'
export { ledgerOf } from './ledger-of.ts'
export { drawMember, type Scores } from './members.ts'
export { openingOn } from './opening.ts'
export { outlook, outlookFrom } from './outlook.ts'
export type * from './outlook-types.ts'
export { type Member, type Past, past } from './past.ts'
export { weightedQuantiles } from './quantiles.ts'
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
