import { type ReadQuantity, readQuantities } from '../entries/reading.ts'
import { type Measure, measureOf } from './measure.ts'
import { isPossible } from './possible.ts'
import { Questions } from './questions.ts'
import { type DateOrder, readDate } from './read-date.ts'
import { readNote } from './read-note.ts'
import { readCell } from './read-number.ts'
import type { Answers, OddCell, SheetNote, SheetQuestion, SheetReading } from './sheet.ts'
import type { WrittenCell } from './written-cells.ts'

/** What the cells gave: readings and notes, what is asked, what is odd. */
export interface Taken {
  readonly readings: readonly SheetReading[]
  readonly notes: readonly SheetNote[]
  readonly questions: readonly SheetQuestion[]
  readonly odd: readonly OddCell[]
}

/** A colour kit cannot read zero, so a 0 of these is a reading below the kit's limit. */
const readByKit = new Set<ReadQuantity>(['nitrate', 'nitrite', 'phosphate', 'ammonia'])

/**
 * Reads every written cell below the header.
 *
 * @param order  undefined while the order of day and month is not known: then nothing is taken, but
 *   all else that must be asked is asked
 */
export function takeCells(
  cells: readonly WrittenCell[],
  decimal: '.' | ',',
  order: DateOrder | undefined,
  answers: Answers,
): Taken {
  const readings: SheetReading[] = []
  const notes: SheetNote[] = []
  const odd: OddCell[] = []
  const questions = new Questions(answers)
  for (const cell of cells) {
    const date = readDate(cell.dateText, order ?? 'day first')
    if (date === undefined) {
      const why =
        cell.dateText === '' ? 'the row has no date' : `"${cell.dateText}" in ${cell.dateCell} is no date`
      odd.push({ cell: cell.cell, asWritten: cell.text, why, taken: 'left out' })
      continue
    }
    const when = { date, ...(cell.time !== undefined && { time: cell.time }) }
    if (!(cell.header.role in readQuantities)) {
      const note = takeNote(cell, questions, odd)
      if (note !== undefined) notes.push({ ...when, ...note })
      continue
    }
    const reading = takeReading(cell, decimal, questions, odd)
    if (reading !== undefined) readings.push({ ...when, ...reading })
  }
  const known = order !== undefined
  return { readings: known ? readings : [], notes: known ? notes : [], questions: questions.asked(), odd }
}

function takeReading(
  cell: WrittenCell,
  decimal: '.' | ',',
  questions: Questions,
  odd: OddCell[],
): Omit<SheetReading, 'date' | 'time'> | undefined {
  // The caller has looked that the role is a quantity.
  const quantity = cell.header.role as ReadQuantity
  const measure = measureOf(quantity, cell.header, questions.answersFor(cell))
  const toCanonical = measure.ok ? measure.toCanonical : (value: number) => value
  const fits = (value: number): boolean => !measure.ok || isPossible(quantity, toCanonical(value))
  const says = readCell(cell.text, decimal, fits)
  const note = (why: string, taken: string): void => {
    odd.push({ cell: cell.cell, asWritten: cell.text, why, taken })
  }
  if (says.says === 'nothing') {
    if (says.odd !== undefined) note(says.odd, 'treated as blank')
    return undefined
  }
  if (says.says === 'not read') {
    note(says.why, 'left out')
    return undefined
  }
  const zero = says.says === 'number' && says.value === 0 && readByKit.has(quantity)
  const below = zero || says.says === 'not detected'
  const limit =
    says.says === 'not detected' && says.limit !== null
      ? says.limit
      : below
        ? questions.limit(cell)
        : undefined
  if (!measure.ok) {
    questions.ask(cell, measure.missing)
    return undefined
  }
  const written = writtenWith(cell, quantity, measure)
  if (below) {
    const value = limit === undefined ? null : (toCanonical(limit) ?? null)
    if (zero && value === null) return { ...written, value: 0, belowDetection: true, zeroAsWritten: true }
    return { ...written, value, belowDetection: true }
  }
  const value = toCanonical(says.says === 'between' ? (says.low + says.high) / 2 : says.value)
  if (value === undefined) {
    note('no sea water reads so', 'left out')
    return undefined
  }
  if (!isPossible(quantity, value))
    note(`cannot be the ${quantity} of sea water`, 'taken as written: look at it')
  const reading = { ...written, value, belowDetection: false }
  if (says.says === 'between') {
    const interval = [toCanonical(says.low) ?? value, toCanonical(says.high) ?? value] as const
    return { ...reading, interval }
  }
  if (says.says === 'above') return { ...reading, aboveRange: true }
  if (says.odd !== undefined) note(says.odd, `read as ${says.value}`)
  return { ...reading, ...(says.approximate && { approximate: true }) }
}

function writtenWith(
  { cell, text, header, remark }: WrittenCell,
  quantity: ReadQuantity,
  { form }: Measure & { readonly ok: true },
): Pick<SheetReading, 'quantity' | 'text' | 'unit' | 'form' | 'remark' | 'cell'> {
  const unit = header.unitAsWritten
  return {
    quantity,
    text,
    ...(unit !== undefined && { unit: header.temperatures ? `${unit} ${header.temperatures}` : unit }),
    ...(form !== undefined && { form }),
    ...(remark !== undefined && { remark }),
    cell,
  }
}

function takeNote(
  cell: WrittenCell,
  questions: Questions,
  odd: OddCell[],
): Omit<SheetNote, 'date' | 'time'> | undefined {
  const answer = questions.answersFor(cell).gallon
  const gallon =
    answer === 'US (3.785 L)' ? 'US gal' : answer === 'imperial (4.546 L)' ? 'imp gal' : undefined
  const says = readNote(cell.text, gallon)
  if (says.gallon) {
    questions.ask(cell, [
      {
        topic: 'gallon',
        question: 'Gallons: US or imperial?',
        options: ['US (3.785 L)', 'imperial (4.546 L)'],
      },
    ])
  }
  if (cell.header.role === 'unknown' && says.events.length === 0 && !says.gallon) {
    odd.push({ cell: cell.cell, asWritten: cell.text, why: 'the parameter is not known', taken: 'left out' })
    return undefined
  }
  if (says.odd !== undefined)
    odd.push({ cell: cell.cell, asWritten: cell.text, why: says.odd, taken: 'kept as a note' })
  return { text: cell.text, cell: cell.cell, events: says.events }
}
