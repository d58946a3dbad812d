import { assemble } from '@holdfast/ecosystem'
import { ledgerOf, outlook, readingInterval } from '@holdfast/inference'
import type { Model } from './answers.ts'
import { accountTitles, explanationsOf } from './explanations.ts'
import { wantedBands } from './wanted-band.ts'

/** The model that ships. */
export const model: Model = {
  outlook: (question, running) => ({
    outlook: outlook(question, running),
    readings: question.observations.map((reading) => ({ reading, ...readingInterval(reading) })),
    bands: wantedBands(question.system),
    processes: explanationsOf(assemble(question.system)),
  }),
  ledger: (question, span, running) => {
    const assembled = assemble(question.system)
    return {
      ledger: ledgerOf(question, span, running),
      members: question.members,
      accounts: accountTitles(assembled),
      processes: explanationsOf(assembled),
    }
  },
}
