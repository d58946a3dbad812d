import type { Day, Observation } from '@holdfast/ecosystem'
import type { FactsOfSystem } from '@holdfast/facts'
import { readingInterval } from '@holdfast/inference'
import type { Nutrient, Peak } from './answer.ts'
import { bandOf, type Courses, units } from './courses.ts'
import { type Log, readingsOf, waterOf } from './log.ts'

/** The highest that a quantity comes to: as read where it has fallen since, else as the model expects it. */
export function peakOf(
  log: Log,
  facts: FactsOfSystem,
  asOf: Day,
  quantity: Nutrient,
  courses: Courses,
): Peak {
  const unit = units[quantity]
  const readings = readingsOf(log, quantity, asOf).filter(({ belowDetection }) => !belowDetection)
  const top = readings.reduce<Observation | undefined>(
    (best, one) => (best === undefined || one.value > best.value ? one : best),
    undefined,
  )
  if (top !== undefined && hasFallen(log, facts, top, asOf)) {
    const { low, high } = readingInterval(top, facts)
    return {
      quantity,
      unit,
      day: { low: top.day, middle: top.day, high: top.day },
      height: { low, middle: top.value, high },
      by: 'readings',
    }
  }
  const since = top?.day ?? log.from
  const peaks = courses.of.map((course) => highest(courses.days, course, since))
  const height = bandOf(
    peaks.map(({ value }) => value),
    courses.weights,
  )
  const read = top?.value ?? 0
  return {
    quantity,
    unit,
    day: bandOf(
      peaks.map(({ day }) => day),
      courses.weights,
    ),
    height: {
      low: height.low,
      middle: Math.max(height.middle, read),
      high: Math.max(height.high, read),
    },
    by: 'model',
  }
}

/** Whether a later reading stands lower than the error of the kit and the water changes between explain. */
function hasFallen(log: Log, facts: FactsOfSystem, top: Observation, asOf: Day): boolean {
  const { low } = readingInterval(top, facts)
  return readingsOf(log, top.quantity as Nutrient, asOf).some(
    (one) => one.day > top.day && one.value < low * leftOfOldWater(log, top.day, one.day),
  )
}

const leftOfOldWater = ({ events, system }: Log, from: Day, to: Day): number =>
  events.reduce(
    (left, event) =>
      event.kind === 'water change' && event.day >= from && event.day <= to
        ? left * Math.max(0, 1 - event.volume_L / waterOf(system))
        : left,
    1,
  )

function highest(days: readonly Day[], course: readonly number[], since: Day) {
  let best = { day: since, value: 0 }
  for (const [at, day] of days.entries())
    if (day >= since && course[at] > best.value) best = { day, value: course[at] }
  return best
}
