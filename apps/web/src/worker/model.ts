import { ledgerOf, outlook } from '@holdfast/inference'
import type { Model } from './answers.ts'

/** The model that ships. */
export const model: Model = {
  outlook: (question, running) => outlook(question, running),
  ledger: (question, span, running) => ledgerOf(question, span, running),
}
