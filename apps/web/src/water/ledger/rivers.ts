import type { Basin, River, Stream } from './streams.ts'

/** Pixels; all widths are amount / fed x `perFed`, in both pictures alike. */
export interface RiverDrawing {
  readonly width: number
  readonly height: number
  readonly sources: readonly DrawnStream[]
  readonly exports: readonly DrawnStream[]
  readonly basin: {
    readonly x: number
    readonly top: number
    readonly width: number
    readonly height: number
    readonly level: number
  }
  readonly parts: readonly DrawnPart[]
}

export interface DrawnStream {
  readonly stream: Stream
  /** Middle of its place at the outer end. */
  readonly x: number
  /** Middle of its label, which stays in the picture. */
  readonly labelX: number
  readonly labelY: number
  readonly width: number
  /** Outlines at 5 %, median and 95 %. */
  readonly low: string
  readonly middle: string
  readonly high: string
  /** Outline of what answers to a finger, however thin the stream is. */
  readonly reach: string
}

export interface DrawnPart {
  readonly basin: Basin
  readonly x: number
  readonly width: number
  /** Height of the rise (above the level) or of the fall (below it). */
  readonly rise: number
  readonly fall: number
  /** 5 and 95 % as y. */
  readonly lowY: number
  readonly highY: number
}

/** Room of a row of labels of two lines each. */
const labels = 40
const nextRow = 30
/** Room of a letter of a label on the average, pixels. */
const letter = 7.6
/** Kept free beside the outermost labels, for words of broad letters. */
const edge = 5
const run = 96
/** A finger points at a thread too, pixels. */
const leastReach = 22
const margin = 14
/** The basin's sides stand in from the edges, so that the streams run together. */
const inset = 0.07

/**
 * Pixels for the amount that was fed, such that the broadest stream of all the pictures fits its place
 * and the basin stays in bounds.
 */
export function widthOfFed(rivers: readonly River[], width: number, tallest = 120): number {
  const limits: number[] = [width]
  for (const river of rivers) {
    for (const side of [river.sources, river.exports]) {
      const rooms = places(side, 0, width)
      side.forEach((stream, i) => {
        const share = stream.high_umol / river.fed_umol
        if (share > 0) limits.push(((rooms[i]?.width ?? 0) * 0.9) / share)
      })
    }
    const up = Math.max(0, ...river.basins.map((basin) => basin.high_umol)) / river.fed_umol
    const down = Math.max(0, ...river.basins.map((basin) => -basin.low_umol)) / river.fed_umol
    if (up + down > 0) limits.push(tallest / (up + down))
  }
  return Math.min(...limits.filter((limit) => Number.isFinite(limit)))
}

/** Geometry of one picture; `above` and `below` the level leave room for the largest rise and fall of both. */
export function drawRiver(
  river: River,
  width: number,
  perFed: number,
  above: number,
  below: number,
): RiverDrawing {
  const scale = river.fed_umol > 0 ? perFed / river.fed_umol : 0
  const x = width * inset
  const [sourceRows, exportRows] = [rowsOf(river.sources, width), rowsOf(river.exports, width)]
  const start = labels + (sourceRows - 1) * nextRow
  const top = start + run
  const basinWidth = width * (1 - 2 * inset)
  const basinHeight = above + below + 2 * margin + 18
  const level = top + margin + above
  const bottom = top + basinHeight
  const stream =
    (side: 'source' | 'export') =>
    (item: Stream, i: number, all: readonly Stream[]): DrawnStream => {
      const outer = middles(all, 0, width)[i] ?? 0
      const inner = middles(all, x + 6, basinWidth - 12)[i] ?? 0
      const [from, to] = side === 'source' ? [start, top + margin / 2] : [bottom - margin / 2, bottom + run]
      const [startX, endX] = side === 'source' ? [outer, inner] : [inner, outer]
      const outline = (amount: number) => band(startX, from, endX, to, amount * scale)
      return {
        stream: item,
        x: outer,
        labelX: Math.min(Math.max(outer, halfOf(item) + edge), width - halfOf(item) - edge),
        labelY:
          side === 'source'
            ? start - 8 - (i % sourceRows) * nextRow
            : bottom + run + 16 + (i % exportRows) * nextRow,
        width: item.amount_umol * scale,
        low: outline(item.low_umol),
        middle: outline(item.amount_umol),
        high: outline(item.high_umol),
        reach: band(startX, from, endX, to, Math.max(leastReach, item.high_umol * scale)),
      }
    }
  return {
    width,
    height: bottom + run + labels + (exportRows - 1) * nextRow,
    sources: river.sources.map(stream('source')),
    exports: river.exports.map(stream('export')),
    basin: { x, top, width: basinWidth, height: basinHeight, level },
    parts: places(river.basins, x, basinWidth).map((room, i) => {
      const basin = river.basins[i] as Basin
      return {
        basin,
        x: room.x,
        width: room.width,
        rise: Math.max(0, basin.amount_umol * scale),
        fall: Math.max(0, -basin.amount_umol * scale),
        lowY: level - basin.low_umol * scale,
        highY: level - basin.high_umol * scale,
      }
    }),
  }
}

/** Half of the width of a label, pixels. */
const halfOf = ({ place }: Stream): number =>
  (letter / 2) * Math.max(...place.label.map((line) => line.length))

/** Labels stand in one row, or by turns in two where neighbours would touch. */
function rowsOf(streams: readonly Stream[], width: number): 1 | 2 {
  const rooms = middles(streams, 0, width)
  const touches = rooms.some((middle, i) => {
    const [left, own] = [streams[i - 1], streams[i]]
    return left && own ? middle - (rooms[i - 1] ?? 0) < halfOf(left) + halfOf(own) : false
  })
  return touches ? 2 : 1
}

/** The tallest rise and deepest fall over several pictures, pixels. */
export function tides(
  rivers: readonly River[],
  perFed: number,
): { readonly above: number; readonly below: number } {
  const shares = rivers.flatMap((river) =>
    river.basins.flatMap((basin) => [basin.low_umol, basin.high_umol].map((end) => end / river.fed_umol)),
  )
  return {
    above: Math.max(4, ...shares.map((share) => share * perFed)),
    below: Math.max(4, ...shares.map((share) => -share * perFed)),
  }
}

/** A stream of constant width that bends from one place to another. */
function band(x0: number, y0: number, x1: number, y1: number, width: number): string {
  const half = Math.max(0, width) / 2
  const mid = (y0 + y1) / 2
  const at = (n: number) => n.toFixed(2)
  const edge = (side: number) =>
    `C${at(x0 + side)},${at(mid)} ${at(x1 + side)},${at(mid)} ${at(x1 + side)},${at(y1)}`
  const back = `C${at(x1 + half)},${at(mid)} ${at(x0 + half)},${at(mid)} ${at(x0 + half)},${at(y0)}`
  return `M${at(x0 - half)},${at(y0)}${edge(-half)}L${at(x1 + half)},${at(y1)}${back}Z`
}

interface HasPlace {
  readonly place: { readonly room: number }
}

function places(
  items: readonly HasPlace[],
  from: number,
  width: number,
): { readonly x: number; readonly width: number }[] {
  const rooms = items.map((item) => item.place.room)
  const whole = rooms.reduce((a, b) => a + b, 0)
  let x = from
  return rooms.map((room) => {
    const own = { x, width: (room / whole) * width }
    x += own.width
    return own
  })
}

const middles = (items: readonly HasPlace[], from: number, width: number) =>
  places(items, from, width).map((room) => room.x + room.width / 2)
