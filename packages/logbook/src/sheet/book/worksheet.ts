import { type Area, type Cell, filledCells, type Grid, limits, tooLarge } from './book.ts'
import { placeOf } from './cell-name.ts'
import { dateOfSerial } from './number-format.ts'
import type { Shared } from './workbook.ts'
import { listenTo } from './xml.ts'

/** What all sheets of a file may hold together, empty places between cells counted. */
export class Room {
  readonly #taken = { rows: 0, cells: 0, filled: 0 }

  take(what: 'rows' | 'cells' | 'filled', count: number): void {
    this.#taken[what] += Math.max(0, count)
    if (this.#taken[what] > limits[what]) throw tooLarge(what === 'filled' ? filledCells : what, limits[what])
  }
}

/** A cell while it is read. */
interface Draft {
  readonly row: number
  readonly column: number
  readonly type: string
  readonly style: number
  value: string
  formula?: string
}

/** The cells of one sheet of a workbook. @throws Unreadable */
export function worksheetGrid(bytes: Uint8Array, name: string, shared: Shared, room: Room): Grid {
  const rows: (Cell | undefined)[][] = []
  const merged: Area[] = []
  let [row, column] = [-1, -1]
  let draft: Draft | undefined
  let into: 'value' | 'formula' | undefined
  const known = new Map<string, Cell | undefined>()
  const keep = (): void => {
    const cell = draft && knownCell(draft, shared, known)
    if (draft === undefined || cell === undefined) return
    room.take('rows', draft.row + 1 - rows.length)
    while (rows.length <= draft.row) rows.push([])
    const line = rows[draft.row]
    if (line === undefined) return
    room.take('cells', draft.column + 1 - line.length)
    room.take('filled', 1)
    while (line.length < draft.column) line.push(undefined)
    line[draft.column] = cell
  }
  listenTo(bytes, `sheet "${name}"`, {
    open: (tag, attributes) => {
      if (tag === 'row') {
        row = attributes.r === undefined ? row + 1 : Number(attributes.r) - 1
        column = -1
      } else if (tag === 'c') {
        const place = placeOf(attributes.r ?? '') ?? { row, column: column + 1 }
        column = place.column
        if (!(place.row >= 0 && place.row < limits.rows)) throw tooLarge('rows', limits.rows)
        if (column >= limits.columns) throw tooLarge('columns in a row', limits.columns)
        draft = { ...place, type: attributes.t ?? 'n', style: Number(attributes.s ?? 0), value: '' }
      } else if (tag === 'f' && draft !== undefined) {
        draft.formula = ''
        into = 'formula'
      } else if (tag === 'v' || tag === 't') into = 'value'
      else if (tag === 'rPh') into = undefined
      else if (tag === 'mergeCell') {
        const area = areaOf(attributes.ref ?? '')
        if (area !== undefined) merged.push(area)
        if (merged.length > limits.mergedAreas) throw tooLarge('merged areas', limits.mergedAreas)
      }
    },
    text: (more) => {
      if (draft === undefined || into === undefined) return
      if (into === 'formula') draft.formula = (draft.formula ?? '') + more
      else draft.value += more
      if (draft.value.length > limits.characters) throw tooLarge('characters in a cell', limits.characters)
      if ((draft.formula?.length ?? 0) > limits.characters)
        throw tooLarge('characters in a formula', limits.characters)
    },
    close: (tag) => {
      if (tag === 'f' || tag === 'v' || tag === 't') into = undefined
      if (tag !== 'c') return
      keep()
      draft = undefined
    },
  })
  return { name, rows, merged }
}

/** Equal cells share one, as in a file of text; formulas are seldom equal. */
function knownCell(draft: Draft, shared: Shared, known: Map<string, Cell | undefined>): Cell | undefined {
  if (draft.formula !== undefined) return cellOf(draft, shared)
  const key = `${draft.type} ${draft.style} ${draft.value}`
  const cell = known.get(key) ?? cellOf(draft, shared)
  known.set(key, cell)
  return cell
}

function cellOf({ type, style, value, formula }: Draft, shared: Shared): Cell | undefined {
  const written = formula === undefined ? {} : { formula }
  const empty = formula === undefined ? undefined : { text: '', ...written }
  if (type === 's') return textCell(shared.texts[Number(value)] ?? '', written) ?? empty
  if (type === 'b') return { text: value === '1' ? 'TRUE' : 'FALSE', ...written }
  if (type === 'd') {
    const [date = '', time] = value.split('T')
    return { text: value, date, ...(time !== undefined && { time: time.slice(0, 5) }), ...written }
  }
  if (type !== 'n') return textCell(value, written) ?? empty
  const number = Number(value)
  if (value.trim() === '' || !Number.isFinite(number)) return textCell(value, written) ?? empty
  const at = shared.dateStyles[style] ? dateOfSerial(number, shared.dateSystem) : undefined
  // a stored 0.07000000000000001 was typed as 0.07
  const text =
    at === undefined ? String(Number(number.toPrecision(12))) : [at.date, at.time].filter(Boolean).join(' ')
  return { text, number, ...at, ...written }
}

function textCell(value: string, written: Pick<Cell, 'formula'>): Cell | undefined {
  const text = value.trim()
  return text === '' ? undefined : { text, ...written }
}

function areaOf(reference: string): Area | undefined {
  const [from = '', to = from] = reference.split(':')
  const [start, end] = [placeOf(from), placeOf(to)]
  if (start === undefined || end === undefined) return undefined
  return { top: start.row, left: start.column, bottom: end.row, right: end.column }
}
