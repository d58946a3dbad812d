import type { LedgerAnswer, OutlookAnswer, OutlookQuestion, Running, Span } from '@holdfast/inference'

export type {
  Balance,
  BandedLedger,
  BandedRow,
  CoralBand,
  Explanation,
  FactUsed,
  LedgerAnswer,
  OutlookAnswer,
  ReadingWithError,
  Running,
  Span,
} from '@holdfast/inference'

/** What the worker needs of the model. */
export interface Model {
  outlook(question: OutlookQuestion, running: Running): OutlookAnswer
  ledger(question: OutlookQuestion, span: Span, running: Running): LedgerAnswer
}
