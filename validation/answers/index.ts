/** Every quantity that we answer, by family; one line to add one. */
import { amountAnswers } from './amounts.ts'
import type { Family } from './answer.ts'
import { idleAnswers } from './certain.ts'
import { commissioningAnswers } from './commissioning.ts'
import { conversionAnswers } from './conversion.ts'
import { crewAnswers } from './crew.ts'
import { dilutionAnswers } from './dilution.ts'
import { evaporationAnswers } from './evaporation.ts'
import { identificationAnswers } from './identification.ts'
import { ladderAnswers } from './ladder.ts'
import { ledgerAnswers } from './ledger.ts'
import { logAnswers } from './log-facts.ts'
import { modelAnswers } from './model-words.ts'
import { stoichiometryAnswers } from './stoichiometry.ts'
import { trendAnswers } from './trends.ts'

export const answers: Family = {
  ...dilutionAnswers,
  ...evaporationAnswers,
  ...stoichiometryAnswers,
  ...amountAnswers,
  ...conversionAnswers,
  ...trendAnswers,
  ...logAnswers,
  ...identificationAnswers,
  ...ledgerAnswers,
  ...idleAnswers,
  ...modelAnswers,
  ...crewAnswers,
  ...ladderAnswers,
  ...commissioningAnswers,
}
