import { placeName } from '../cells/account.ts'
import type { TakenValue } from '../cells/take-values.ts'
import { grouped } from '../grouped.ts'
import type { Series, Table } from '../table/table.ts'

/** Readings that may be compared: of one series in one tank, in the order of their days. */
export interface Run {
  readonly values: readonly TakenValue[]
  /** Place in `values` of each that is a plain figure above 0. */
  readonly figures: readonly { readonly at: number; readonly value: number }[]
}

/** One check after the other asks for the runs of the same values. */
const known = new WeakMap<readonly TakenValue[], readonly Run[]>()

/** The runs of a file; a series goes on from sheet to sheet. */
export function runsOf(values: readonly TakenValue[]): readonly Run[] {
  const found = known.get(values) ?? findRuns(values)
  known.set(values, found)
  return found
}

function findRuns(values: readonly TakenValue[]): readonly Run[] {
  const keys = new Map<Series, string>()
  const groups = grouped(values, ({ series, table }) => {
    const found = keys.get(series) ?? keyOf(series, table)
    keys.set(series, found)
    return found
  })
  return [...groups.values()].map((group) => {
    const days = inOrder(group)
    const figures = days.flatMap(({ value: { value, belowDetection, aboveRange } }, at) =>
      value !== null && value > 0 && !belowDetection && !aboveRange ? [{ at, value }] : [],
    )
    return { values: days, figures }
  })
}

function keyOf({ quantity, tank = '', kit = '', key }: Series, { layout }: Table): string {
  return JSON.stringify([quantity, tank, kit, layout === 'long' ? '' : key])
}

/** In the order of their days, which most sheets keep: nothing is copied then. */
function inOrder(values: readonly TakenValue[]): readonly TakenValue[] {
  const whens = values.map(whenOf)
  const falls = whens.some((when, at) => at > 0 && when < (whens[at - 1] ?? ''))
  if (!falls) return values
  const order = whens.map((_, at) => at)
  const compare = (a = '', b = ''): number => (a < b ? -1 : a > b ? 1 : 0)
  return order.sort((a, b) => compare(whens[a], whens[b]) || a - b).flatMap((at) => values[at] ?? [])
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
  if (changes.size === 0) return values
  return values.flatMap((value) => {
    const change = changes.get(placeName(value))
    if (change === 'left out') return []
    return change === undefined ? [value] : [{ ...value, ...change }]
  })
}
