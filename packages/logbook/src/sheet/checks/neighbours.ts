import { placeName } from '../cells/account.ts'
import type { TakenValue } from '../cells/take-values.ts'
import { grouped } from '../grouped.ts'

/** Readings that may be compared: of one series in one tank, in the order of their days. */
export interface Run {
  readonly values: readonly TakenValue[]
  /** Place in `values` of each that is a plain figure above 0. */
  readonly figures: readonly { readonly at: number; readonly value: number }[]
}

/** The runs of a file; a series goes on from sheet to sheet. */
export function runsOf(values: readonly TakenValue[]): readonly Run[] {
  const groups = grouped(values, ({ series, table }) => {
    const { quantity, tank = '', kit = '', key } = series
    return JSON.stringify([quantity, tank, kit, table.layout === 'long' ? '' : key])
  })
  return [...groups.values()].map((group) => {
    const days = group.toSorted((a, b) => whenOf(a).localeCompare(whenOf(b)))
    const figures = days.flatMap(({ value: { value, belowDetection, aboveRange } }, at) =>
      value !== null && value > 0 && !belowDetection && !aboveRange ? [{ at, value }] : [],
    )
    return { values: days, figures }
  })
}

const whenOf = ({ when }: TakenValue): string =>
  `${when.date}${when.time ?? (when.half === 'pm' ? 'T18' : '')}`

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  const [low, high] = [
    sorted[Math.floor((sorted.length - 1) / 2)] ?? 0,
    sorted[Math.ceil((sorted.length - 1) / 2)] ?? 0,
  ]
  return (low + high) / 2
}

/** Values changed by a check, by their place in the file. */
export type Changes = ReadonlyMap<string, Partial<TakenValue> | 'left out'>

export function changed(values: readonly TakenValue[], changes: Changes): readonly TakenValue[] {
  return values.flatMap((value) => {
    const change = changes.get(placeName(value))
    if (change === 'left out') return []
    return change === undefined ? [value] : [{ ...value, ...change }]
  })
}
