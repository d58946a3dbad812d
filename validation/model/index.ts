/** The model as the cases ask it. */
import { molarMass } from '@holdfast/quantities'
import type { ModelAnswers } from '../model-answers.ts'
import { budget } from './books.ts'
import { commissioningOf } from './commissioning.ts'
import { equilibrium, medians, move } from './courses.ts'
import { grazingCapacityAt, hungry, mostOfCrew, proposedCrew, ungrazed } from './crew.ts'
import { growth } from './growth.ts'
import { offeredLadder } from './ladder.ts'
import { limitingBacteria } from './limits.ts'
import { exhaustedAfter, reboundOfChange } from './media.ts'

export const holdfastModel: ModelAnswers = {
  budget,
  move,
  outlook: (file, of, days, lever) => medians(file, { of }, [days], lever)[0] ?? Number.NaN,
  cover: (file, surface, algae, days, lever) =>
    medians(file, { of: 'cover', surface, algae }, [days], lever)[0] ?? Number.NaN,
  equilibrium,
  mediaExhaustedAfter: exhaustedAfter,
  takenByMedia: (file, from, to) =>
    ((budget(file, 'P', from, to).exports.get('ferric_media') ?? 0) * molarMass('PO4')) / molarMass('P'),
  reboundOfChange,
  growth,
  ungrazed,
  grazingCapacity: grazingCapacityAt,
  proposedCrew,
  hungry,
  mostOfCrew,
  ladder: offeredLadder,
  limitingBacteria,
  commissioning: commissioningOf,
  limiting: () => ({ skipped: 'model' }),
}
