/** Answers of a start-up: its peaks, and when the first animals may come. */
import type { Commissioning } from '@holdfast/commissioning'
import { isNoModel } from '../model-answers.ts'
import { type Answered, CannotAnswer, type Family, type Question } from './answer.ts'

type Value = Exclude<Answered, { readonly skipped: unknown }>

export const commissioningAnswers: Family = {
  cycle_order: {
    unit: 'words',
    answer: of(({ peaks }) => ({ value: peaks.map(({ quantity }) => quantity) })),
  },
  nitrite_peak_mg_L: {
    unit: 'mg/L NO2',
    answer: of(({ peaks }) => {
      const peak = peaks.find(({ quantity }) => quantity === 'nitrite')
      if (peak === undefined) throw new CannotAnswer('a course of nitrite')
      return { value: peak.height.middle }
    }),
  },
  ready_now: { unit: 'yes or no', answer: of(({ readyNow }) => ({ value: readyNow })) },
  ready_date_days: {
    unit: 'd since start',
    answer: of(({ ready, from }) => ({ value: ready.middle - from })),
  },
  ready_requires: {
    unit: 'words',
    answer: of(({ conditions }) => ({ value: conditions.map(({ name }) => name), anyOrder: true })),
  },
}

function of(read: (answer: Commissioning) => Value) {
  return ({ file, model }: Question): Answered => {
    const answer = model.commissioning(file)
    return isNoModel(answer) ? answer : read(answer)
  }
}
