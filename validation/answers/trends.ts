/** Whether a reading rises or falls: in the log, and in the outlook. */
import { fact } from '@holdfast/facts'
import { dayNumber } from '../calendar.ts'
import { type Course, isNoModel } from '../model-answers.ts'
import { type Answered, CannotAnswer, type Family, type Question, spanOf } from './answer.ts'
import { outstandingReading } from './doubtful-reading.ts'
import { readingsOf, usualValue } from './readings.ts'

/** Less than this share of the start value is no trend. */
const leastShare = 0.1
/** A trend of less than this share a week is slow. */
const slowPerWeek = 0.01

export const trendAnswers: Family = {
  nitrate_trend_past: { unit: 'words', answer: (question) => pastTrend(question, 'nitrate') },
  phosphate_trend_past: { unit: 'words', answer: (question) => pastTrend(question, 'phosphate') },
  nitrate_trend_30d: { unit: 'words', answer: (question) => comingTrend(question, 'nitrate') },
  phosphate_trend_30d: { unit: 'words', answer: (question) => comingTrend(question, 'phosphate') },
}

/** One step of a usual kit, mg/L of the ion: keepers' practice, since a case does not name its kit. */
export function kitStep(of: Course): number {
  return fact(`kit.${of}.step`).typical
}

function comingTrend({ file, model }: Question, of: Course): Answered {
  const move = model.move(file, of, 30)
  if (isNoModel(move)) return move
  return { value: direction(move.start, move.start + move.change, kitStep(of)) }
}

/**
 * By the straight line of least squares through the readings, one below detection at its limit. A reading that
 * lies far off its neighbours is to be taken again and makes no trend.
 */
function pastTrend({ file, check }: Question, of: Course): Answered {
  const { from, to } = spanOf(file, check)
  const outstanding = outstandingReading(file, of)
  const points = readingsOf(file, of, from, to)
    .filter((reading) => reading !== outstanding)
    .map((reading) => ({
      week: (dayNumber(reading.date) - dayNumber(from)) / 7,
      value: usualValue(reading),
    }))
  if (new Set(points.map(({ week }) => week)).size < 2)
    throw new CannotAnswer(`needs readings of ${of} on two days`)
  const { slope, at } = line(points)
  const weeks = points.map(({ week }) => week)
  const start = at(Math.min(...weeks))
  const end = at(Math.max(...weeks))
  const word = direction(start, end, kitStep(of))
  if (word === 'steady') return { value: word }
  // By today's value: what a week moves of what is there now.
  return { value: Math.abs(slope) < slowPerWeek * end ? `${word}_slowly` : word }
}

function direction(start: number, end: number, step: number): 'rising' | 'falling' | 'steady' {
  const move = end - start
  if (Math.abs(move) <= leastShare * Math.abs(start) || Math.abs(move) <= step) return 'steady'
  return move > 0 ? 'rising' : 'falling'
}

function line(points: readonly { readonly week: number; readonly value: number }[]) {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  const week = mean(points.map((point) => point.week))
  const value = mean(points.map((point) => point.value))
  const spread = mean(points.map((point) => (point.week - week) ** 2))
  const slope = mean(points.map((point) => (point.week - week) * (point.value - value))) / spread
  return { slope, at: (when: number) => value + slope * (when - week) }
}
