import type { Cell } from '../book/book.ts'
import type { DateText } from '../dates/parse-date.ts'
import type { Series, Table } from '../table/table.ts'
import type { MonthAndYear } from '../words/months.ts'
import type { Place } from './account.ts'

/** When something was read, as the sheet says it: one for each row and column of dates. */
export interface Moment extends Place {
  readonly written: string
  readonly said: DateText
  readonly half?: 'am' | 'pm'
  /** Month and year that the sheet around it says. */
  readonly context: MonthAndYear
  /** What questions about the dates of its column are kept under. */
  readonly key: string
  readonly where: string
  /** Dates of one run are written one after the other. */
  readonly run: string
}

interface Found extends Place {
  readonly content: Cell
  readonly moment: Moment
  readonly table: Table
  /** Counts along the way in which the sheet was written. */
  readonly row: number
}

/** A cell below a quantity, or a value beside its parameter. */
export interface FoundValue extends Found {
  readonly series: Series
  readonly remark?: string
}

/** Words. */
export interface FoundNote extends Found {
  readonly text: string
  readonly tank?: string
}

/** All that stands in the tables of a file, not yet understood. */
export interface Gathered {
  readonly values: readonly FoundValue[]
  readonly notes: readonly FoundNote[]
  readonly moments: readonly Moment[]
}
