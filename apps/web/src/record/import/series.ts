import {
  type QuestionTopic,
  type ReadQuantity,
  readQuantities,
  type Sheet,
  type SheetColumn,
  type SheetReading,
} from '@holdfast/logbook'
import type { Question } from './settle.ts'
import { storedInWords } from './stored-in-words.ts'

/** Readings of one quantity as they will be stored: of one tank, in one unit and form, by one kit. */
export interface Series {
  readonly quantity: ReadQuantity
  readonly unit?: string
  readonly form?: string
  readonly kit?: string
  readonly tank?: string
  /** Where they stand in the sheet, such as 'column C, “NO3 mg/L”'. */
  readonly from: readonly string[]
  readonly count: number
  /** Days, where there are any. */
  readonly first?: string
  readonly last?: string
  readonly sample: readonly Sampled[]
  /** Cells that wait for an answer. */
  readonly waiting: number
  /** Whether the figures are clear and their days are not. */
  readonly waitsForDays: boolean
}

/** A cell beside what becomes of it. */
export interface Sampled {
  readonly cell: string
  readonly date: string
  readonly text: string
  readonly stored: string
}

interface Gathered {
  readonly readings: { first: SheetReading; last: SheetReading; unusual?: SheetReading }
  readonly from: Set<string>
  count: number
  firstDay: string
  lastDay: string
}

/** The series of a sheet, and the columns of readings of which nothing is taken until a question is answered. */
export function seriesOf(sheet: Sheet, questions: readonly Question[]): readonly Series[] {
  const headings = new Headings(sheet)
  const found = new Map<string, Gathered>()
  for (const reading of sheet.readings) {
    const { quantity, unit, form, kit, tank, date } = reading
    const key = [tank, quantity, unit, form, kit].join('\n')
    const known = found.get(key)
    if (known === undefined) {
      const from = new Set([headings.of(reading.cell)])
      const readings = { first: reading, last: reading, ...(isUnusual(reading) && { unusual: reading }) }
      found.set(key, { readings, from, count: 1, firstDay: date, lastDay: date })
      continue
    }
    known.count++
    known.readings.last = reading
    if (isUnusual(reading)) known.readings.unusual ??= reading
    if (date < known.firstDay) known.firstDay = date
    if (date > known.lastDay) known.lastDay = date
    known.from.add(headings.of(reading.cell))
  }
  const taken = [...found.values()].map(asSeries)
  const places = new Set(taken.flatMap(({ from }) => from))
  const waiting = sheet.columns.flatMap((column) => {
    const place = headings.named(column)
    return isReading(column.role) && !places.has(place) ? [untaken(column, place, questions)] : []
  })
  return [...taken, ...waiting]
}

/** Shown in a sample before an ordinary one. */
const isUnusual = (one: SheetReading): boolean =>
  one.belowDetection || one.interval !== undefined || one.suspect === true || one.aboveRange === true

function asSeries({ readings, from, count, firstDay, lastDay }: Gathered): Series {
  const { first, last, unusual } = readings
  const { quantity, unit, form, kit, tank } = first
  const sample = [...new Set([first, ...(unusual === undefined ? [] : [unusual]), last])]
  return {
    quantity,
    ...(unit !== undefined && { unit }),
    ...(form !== undefined && { form }),
    ...(kit !== undefined && { kit }),
    ...(tank !== undefined && { tank }),
    from: [...from],
    count,
    first: firstDay,
    last: lastDay,
    sample: sample.map((one) => ({
      cell: one.cell,
      date: one.date,
      text: one.text,
      stored: storedInWords(one),
    })),
    waiting: 0,
    waitsForDays: false,
  }
}

function untaken(
  { sheet, letter, role, unit, form, tank }: SheetColumn,
  place: string,
  questions: readonly Question[],
): Series {
  const open = questions.filter(({ waiting }) => waiting > 0)
  const isHere = (cell: string): boolean => {
    const at = placeIn(cell)
    return at.sheet === sheet && (at.letters === letter || at.row === letter)
  }
  return {
    quantity: role as ReadQuantity,
    ...(unit !== undefined && { unit }),
    ...(form !== undefined && { form }),
    ...(tank !== undefined && { tank }),
    from: [place],
    count: 0,
    sample: [],
    waiting: new Set(open.flatMap(({ cells }) => cells).filter(isHere)).size,
    waitsForDays: open.some(({ topic }) => ofDays.has(topic)),
  }
}

const ofDays: ReadonlySet<QuestionTopic> = new Set(['date-order', 'date', 'year'] as const)

export const isReading = (role: SheetColumn['role']): role is ReadQuantity => role in readQuantities

/** What stands at the head of each column, or of each row where dates run across. */
class Headings {
  readonly #isAcross: boolean
  readonly #isBook: boolean
  readonly #byPlace = new Map<string, string>()

  constructor({ layout, columns }: Sheet) {
    this.#isAcross = layout === 'across'
    this.#isBook = new Set(columns.map(({ sheet }) => sheet)).size > 1
    for (const { sheet, letter, header } of columns) {
      const text = header.replace(/\s+/g, ' ')
      this.#byPlace.set(`${sheet ?? ''}!${letter}`, text)
      // Sheets of the same shape are named once, by the first of them.
      if (!this.#byPlace.has(letter)) this.#byPlace.set(letter, text)
    }
  }

  named({ sheet, letter, header }: SheetColumn): string {
    return this.#words(sheet, letter, header.replace(/\s+/g, ' '))
  }

  of(cell: string): string {
    const { sheet, letters, row } = placeIn(cell)
    const letter = this.#isAcross ? row : letters
    const header = this.#byPlace.get(`${sheet ?? ''}!${letter}`) ?? this.#byPlace.get(letter)
    return this.#words(sheet, letter, header)
  }

  #words(sheet: string | undefined, letter: string, header: string | undefined): string {
    const where = this.#isBook && sheet !== undefined ? ` of “${sheet}”` : ''
    return `${this.#isAcross ? 'row' : 'column'} ${letter}${where}${header === undefined ? '' : `, “${header}”`}`
  }
}

function placeIn(cell: string): { readonly sheet?: string; readonly letters: string; readonly row: string } {
  const at = cell.lastIndexOf('!')
  const [, letters = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(cell.slice(at + 1)) ?? []
  return { ...(at >= 0 && { sheet: cell.slice(0, at) }), letters, row }
}
