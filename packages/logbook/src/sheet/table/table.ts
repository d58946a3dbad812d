import type { ReadQuantity } from '../../entries/reading.ts'
import type { Header } from './header.ts'
import type { View } from './view.ts'

/** A column of a table with what the words above it say. */
export interface Column {
  readonly at: number
  /** As written, the rows of the header joined. */
  readonly text: string
  readonly header: Header
  /** The column that holds its dates, and its times of day. */
  readonly dateAt: number
  readonly timeAt?: number
  readonly tank?: string
  readonly kit?: string
  readonly half?: 'am' | 'pm'
}

/** A part of a sheet with one header: a column a quantity (wide), or one reading a row (long). */
export interface Table {
  readonly view: View
  readonly layout: 'wide' | 'long'
  readonly headerTop: number
  /** The first row below the header, and the row at which the table ends. */
  readonly top: number
  readonly end: number
  /** Texts above the header that belong to this table, and all that stood above it in the sheet. */
  readonly titles: readonly string[]
  readonly columns: readonly Column[]
}

/** What a column or a parameter holds; readings of one series are compared with each other. */
export interface Series {
  /** Under which its questions are kept: the letter of the column, or the parameter. */
  readonly key: string
  readonly where: string
  readonly quantity: ReadQuantity
  readonly header: Header
  /** By a title such as "all ppm unless written". */
  readonly titleUnit?: string
  readonly tank?: string
  readonly kit?: string
}
