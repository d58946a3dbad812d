import type { Band, Commissioning } from '@holdfast/commissioning'
import { scaleLinear } from 'd3-scale'
import { isBeyond } from './words.ts'

/** One row of the picture, pixels: what it is of, where it is most likely and how far it may lie beside that. */
export interface Row {
  readonly key: string
  readonly title: string
  readonly y: number
  /** Not there where it lies beyond the picture. */
  readonly middle?: number
  readonly low: number
  readonly high: number
  /** Where an arrow says that it may lie beyond the picture. */
  readonly arrow?: number
  readonly shape: 'peak' | 'animals'
}

export interface Drawing {
  readonly width: number
  readonly height: number
  /** Where the rows begin and end. */
  readonly left: number
  readonly right: number
  readonly today: number
  readonly rows: readonly Row[]
  readonly ticks: readonly { readonly x: number; readonly day: number }[]
  readonly shown: { readonly from: number; readonly to: number }
}

const rowHeight = 30
const top = 14
/** Room under the rows for the days. */
const axisHeight = 34
/** As much as the longest title needs. */
const left = 112
const arrowLength = 12
const leastShown_days = 28
const tickEvery = 95

/** Where the peaks and the first animals lie, from the first day to the last that is known. */
export function drawStart(answer: Commissioning, width: number): Drawing {
  const { from, asOf, until, peaks, ready } = answer
  const inSight = peaks.filter((peak) => !isBeyond(peak, answer)).map(({ day }) => day)
  const ends = [...inSight, ready].flatMap(({ middle, high }) => [middle, high]).filter(Number.isFinite)
  const to = Math.min(until, Math.max(from + leastShown_days, asOf + 7, ...ends.map((day) => day + 3)))
  const right = width - 20
  const x = scaleLinear([from, to], [left, right])
  const row = (day: Band, at: number, named: Pick<Row, 'key' | 'title' | 'shape'>, beyond: boolean): Row => {
    const isOpen = beyond || day.high > to
    return {
      ...named,
      y: top + rowHeight * (at + 0.5),
      low: x(Math.min(day.low, to)),
      high: x(Math.min(day.high, to)),
      ...(isOpen ? { arrow: right + arrowLength } : {}),
      ...(day.middle <= to && !beyond ? { middle: x(day.middle) } : {}),
    }
  }
  return {
    width,
    height: top + rowHeight * (peaks.length + 1) + axisHeight,
    left,
    right,
    today: x(asOf),
    shown: { from, to },
    rows: [
      ...peaks.map((peak, at) =>
        row(
          peak.day,
          at,
          { key: peak.quantity, title: `Most ${peak.quantity}`, shape: 'peak' },
          isBeyond(peak, answer),
        ),
      ),
      row(ready, peaks.length, { key: 'animals', title: 'First animals', shape: 'animals' }, false),
    ],
    ticks: x
      .ticks(Math.max(2, Math.floor((right - left) / tickEvery)))
      .filter((day) => Number.isInteger(day))
      .map((day) => ({ day, x: x(day) })),
  }
}
