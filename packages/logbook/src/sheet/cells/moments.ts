import type { Cell } from '../book/book.ts'
import { columnLetter } from '../book/cell-name.ts'
import { dateOfSerial } from '../book/number-format.ts'
import { type DateText, parseDate, parseTime } from '../dates/parse-date.ts'
import type { Column, Table } from '../table/table.ts'
import type { MonthAndYear } from '../words/months.ts'
import type { Moment } from './gathered.ts'

/** Serial numbers of the days from 1989 to 2064; in a column of dates nothing else is so large. */
const serials = [32_500, 60_200] as const

/** The moments of a table: one for each row and column of dates. */
export class Moments {
  readonly #table: Table
  readonly #context: MonthAndYear
  readonly #key: string
  readonly #last = new Map<number, Moment>()
  readonly #columns = new Map<number, Pick<Moment, 'key' | 'where' | 'run'>>()
  readonly all: Moment[] = []

  constructor(table: Table, context: MonthAndYear, key: string) {
    this.#table = table
    this.#context = context
    this.#key = key
  }

  /**
   * When the cells of a row were read; undefined where the row has no date. Where the date covers several
   * rows, or a row with a time of day of its own stands below one with a date, it is the date above.
   */
  at(row: number, { dateAt, timeAt, half: ofColumn }: Column): Moment | undefined {
    const { view } = this.#table
    const own = view.cell(row, dateAt)
    const timeCell = timeAt === undefined ? undefined : view.spread(row, timeAt)
    const clock =
      timeCell &&
      (timeCell.time === undefined
        ? (parseTime(timeCell.text) ?? fraction(timeCell))
        : { time: timeCell.time })
    const spread = own ?? view.spread(row, dateAt)
    const said = spread && this.#dateIn(spread)
    const above = this.#last.get(dateAt)
    const ditto =
      own === undefined ? clock !== undefined : /^(?:["”″〃]|''|,,|dito|ditto|idem)$/i.test(own.text)
    if (said === undefined && !(ditto && above !== undefined)) return undefined
    const half = clock && 'half' in clock ? clock.half : ofColumn
    const time = clock && 'time' in clock ? clock.time : undefined
    const base = said === undefined ? { ...above?.said, time: undefined } : said
    const { time: inDate, ...date } = base
    const fullTime = time ?? inDate
    const moment: Moment = {
      ...(view.sheet !== undefined && { sheet: view.sheet }),
      cell: said === undefined ? (above?.cell ?? '') : view.name(row, dateAt),
      written: said === undefined ? (above?.written ?? '') : (spread?.text ?? ''),
      said: { ...date, ...(fullTime !== undefined && { time: fullTime }) },
      ...(half !== undefined && { half }),
      context: this.#context,
      ...this.#column(dateAt),
    }
    this.#last.set(dateAt, moment)
    this.all.push(moment)
    return moment
  }

  /** What all moments of a column of dates have in common, made once. */
  #column(dateAt: number): Pick<Moment, 'key' | 'where' | 'run'> {
    const { view } = this.#table
    const known = this.#columns.get(dateAt) ?? {
      key: this.#key,
      where: view.turned ? `row ${dateAt + 1}` : `column ${columnLetter(dateAt)}`,
      run: `${view.sheet ?? ''}!${dateAt}`,
    }
    this.#columns.set(dateAt, known)
    return known
  }

  #dateIn(cell: Cell): DateText | undefined {
    const { text, number, date, time } = cell
    if (date !== undefined) return { ...parseDate(date), ...(time !== undefined && { time }) }
    const figure = number ?? (/^\d{1,5}(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : undefined)
    if (figure !== undefined && figure >= serials[0] && figure <= serials[1]) {
      const day = dateOfSerial(figure, 1900)
      if (day !== undefined)
        return { ...parseDate(day.date), ...(day.time !== undefined && { time: day.time }) }
    }
    const parsed = parseDate(text)
    if (parsed !== undefined) return parsed
    const day = /^(\d{1,2})\.?$/.exec(text)?.[1]
    const knowsMonth = this.#context.month !== undefined
    if (day !== undefined && knowsMonth && Number(day) >= 1 && Number(day) <= 31) return { day: Number(day) }
    return undefined
  }
}

/** A time of day that a workbook keeps as a part of a day. */
function fraction({ number }: Cell): { readonly time: string } | undefined {
  if (number === undefined || number < 0 || number >= 1) return undefined
  const minutes = Math.round(number * 1440)
  const two = (figure: number): string => String(figure).padStart(2, '0')
  return { time: `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}` }
}
