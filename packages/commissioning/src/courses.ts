import type { Day } from '@holdfast/ecosystem'
import { futures, type OutlookQuestion, type Past, weightedQuantiles } from '@holdfast/inference'
import type { Band, Course, Dissolved, WaterUnit } from './answer.ts'

/** What each member of the ensemble has of a quantity, day after day, and their weights. */
export interface Courses {
  readonly days: readonly Day[]
  readonly of: readonly (readonly number[])[]
  readonly weights: readonly number[]
}

export const units: Readonly<Record<Dissolved, WaterUnit>> = {
  ammonia: 'mg/L N',
  nitrite: 'mg/L NO2',
  nitrate: 'mg/L NO3',
  phosphate: 'mg/L PO4',
}

export const bandOf = (values: readonly number[], weights: readonly number[]): Band => {
  const [low, middle, high] = weightedQuantiles(values, weights, [0.05, 0.5, 0.95])
  return { low, middle, high }
}

/** Past and future of what is dissolved, if nothing is done but what is done now. */
export function coursesOf(
  { model, members, seen, days: before, weights }: Past,
  question: OutlookQuestion,
): (quantity: Dissolved) => Courses {
  const { asOf, horizonDays } = question
  const ran = futures(model, question)(members)
  // The last day of the past is the first of the future.
  const days = [...before.slice(0, -1), ...Array.from({ length: horizonDays + 1 }, (_, day) => asOf + day)]
  return (quantity) => {
    const which = seen.findIndex((one) => one.quantity === quantity)
    return {
      days,
      weights: weights.of,
      of: members.map(({ course }, m) => [...course[which].slice(0, -1), ...ran[m][which]]),
    }
  }
}

export const courseOf = (quantity: Dissolved, { days, of, weights }: Courses): Course => ({
  quantity,
  unit: units[quantity],
  days,
  bands: days.map((_, at) =>
    bandOf(
      of.map((course) => course[at]),
      weights,
    ),
  ),
})
