import type { Commissioning, Peak } from '@holdfast/commissioning'
import { peakWords, type Writing } from '@holdfast/commissioning/words'
import { written } from '../../figure/numbers.ts'

/** Whether a quantity still rises on the last day that the model looks at: its peak is not in sight. */
export const isBeyond = ({ day, by }: Peak, { courses }: Commissioning): boolean =>
  by === 'model' && day.middle >= (courses[0]?.days.at(-1) ?? Number.POSITIVE_INFINITY)

/** One peak as a sentence: when it stood or will stand, how high, and who tells it. */
export function peakSentence(peak: Peak, answer: Commissioning, { date }: Writing): string {
  const { quantity, day, height, unit, by } = peak
  const { value, low, high } = written(height.middle, height.low, height.high)
  const amount = `${value} (${low} to ${high}) ${unit}`
  if (isBeyond(peak, answer))
    return `${capital(quantity)} still rises on ${date(day.middle)}, at ${amount}, ${peakWords[by]}.`
  const span = day.low === day.high ? '' : ` (${date(day.low)} to ${date(day.high)})`
  const stands = day.middle > answer.asOf ? 'will stand highest' : 'stood highest'
  return `${capital(quantity)} ${stands} ${by === 'readings' ? 'on' : 'about'} ${date(day.middle)}${span}, at ${amount}, ${peakWords[by]}.`
}

export const capital = (text: string): string => `${text[0]?.toUpperCase()}${text.slice(1)}`
