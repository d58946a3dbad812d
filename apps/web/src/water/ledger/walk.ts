import type { RiverDrawing } from './rivers.ts'

/** Ways in, what the system holds, ways out: the rows of a picture from above to below. */
export type Side = 'source' | 'basin' | 'export'

/** Where one stands in the pictures; the same place in the picture of N and in that of P. */
export interface Spot {
  readonly side: Side
  readonly account: string
}

interface Placed extends Spot {
  readonly x: number
}

export const isAt = (spot: Spot | undefined, side: Side, account: string) =>
  spot?.side === side && spot.account === account

/** All spots of a picture, row by row. */
function rowsOf({ sources, parts, exports }: RiverDrawing): readonly (readonly Placed[])[] {
  return [
    sources.map(({ stream, x }) => ({ side: 'source' as const, account: stream.place.account, x })),
    parts.map(({ basin, x, width }) => ({
      side: 'basin' as const,
      account: basin.place.account,
      x: x + width / 2,
    })),
    exports.map(({ stream, x }) => ({ side: 'export' as const, account: stream.place.account, x })),
  ].filter((row) => row.length > 0)
}

/** Where a key leads: to the neighbour, or to the nearest of the row above or below. Undefined: no such key. */
export function walked(drawing: RiverDrawing, from: Spot | undefined, key: string): Spot | undefined {
  const rows = rowsOf(drawing)
  const row = Math.max(
    0,
    rows.findIndex((one) => one.some(({ side }) => side === from?.side)),
  )
  const here = rows[row] ?? []
  const at = here.findIndex(({ account }) => account === from?.account)
  if (!['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End'].includes(key)) return undefined
  if (at < 0) return spotOf(here[0])
  if (key === 'Home') return spotOf(here[0])
  if (key === 'End') return spotOf(here.at(-1))
  if (key === 'ArrowLeft') return spotOf(here[Math.max(0, at - 1)])
  if (key === 'ArrowRight') return spotOf(here[Math.min(here.length - 1, at + 1)])
  const other = rows[row + (key === 'ArrowDown' ? 1 : -1)] ?? here
  const x = here[at]?.x ?? 0
  return spotOf(
    other === here ? here[at] : [...other].sort((a, b) => Math.abs(a.x - x) - Math.abs(b.x - x))[0],
  )
}

const spotOf = (placed: Placed | undefined): Spot | undefined =>
  placed && { side: placed.side, account: placed.account }
