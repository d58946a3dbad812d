import type { Account } from '../cells/account.ts'
import type { TakenValue } from '../cells/take-values.ts'
import { grouped } from '../grouped.ts'

const fewest = 3
const alike = 0.03

/**
 * Two columns of one quantity in two forms or units that say the same in every row are one reading written
 * twice: the second is listed and not taken.
 */
export function withoutTwins(values: readonly TakenValue[], account: Account): readonly TakenValue[] {
  const columns = grouped(
    values.filter(({ table }) => table.layout === 'wide'),
    ({ sheet = '', table, series, when }) => {
      const { quantity, tank = '', kit = '', key } = series
      return JSON.stringify([sheet, table.headerTop, quantity, tank, kit, when.half ?? '', key])
    },
  )
  const twins = new Set<TakenValue>()
  const all = [...columns.entries()]
  for (const [at, [key, first]] of all.entries()) {
    for (const [other, second] of all.slice(at + 1)) {
      if (withoutKey(key) !== withoutKey(other) || sameWriting(first, second)) continue
      const rows = new Map(first.map((value) => [value.row, value.value.value]))
      const pairs = second.flatMap((value) => {
        const before = rows.get(value.row)
        return before && value.value.value ? [before / value.value.value] : []
      })
      if (pairs.length < fewest || pairs.some((ratio) => Math.abs(ratio - 1) > alike)) continue
      for (const value of second) if (rows.has(value.row)) twins.add(value)
    }
  }
  for (const twin of twins)
    account.list(twin, twin.content.text, 'the same reading in another form', 'not a second reading')
  return values.filter((value) => !twins.has(value))
}

const withoutKey = (key: string): string => JSON.stringify((JSON.parse(key) as unknown[]).slice(0, -1))

function sameWriting([first]: readonly TakenValue[], [second]: readonly TakenValue[]): boolean {
  return first?.measure.unit === second?.measure.unit && first?.measure.form === second?.measure.form
}
