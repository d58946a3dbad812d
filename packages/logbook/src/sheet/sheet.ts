import type { ReadQuantity } from '../entries/reading.ts'
import type { Issue } from '../issue.ts'

/** One reading as the sheet gives it, in the canonical unit of its quantity. */
export interface SheetReading {
  readonly date: string
  readonly time?: string
  readonly quantity: ReadQuantity
  /** Null where nothing was detected and no limit is known. */
  readonly value: number | null
  /** True: `value` is the limit, or null, or 0 where the sheet says 0. */
  readonly belowDetection: boolean
  readonly zeroAsWritten?: true
  readonly aboveRange?: true
  readonly approximate?: true
  readonly interval?: readonly [number, number]
  readonly text: string
  /** As written in header or cell; absent where none stands there. */
  readonly unit?: string
  readonly form?: string
  /** What stands beside the reading, in a sheet with one reading a row. */
  readonly remark?: string
  /** A1 style; the row counts records from 1. */
  readonly cell: string
}

/** What a note says in a form that can be logged; proposed, not yet an entry. */
export type NoteEvent =
  | { readonly kind: 'water-change'; readonly volume_L: number }
  | { readonly kind: 'media'; readonly action: 'placed' | 'replaced'; readonly mass_g: number }
  | { readonly kind: 'animals'; readonly count: number; readonly named: string }

export interface SheetNote {
  readonly date: string
  readonly time?: string
  readonly text: string
  readonly cell: string
  readonly events: readonly NoteEvent[]
}

/** What the sheet leaves open. */
export type QuestionTopic =
  | 'date-order'
  | 'nitrate-form'
  | 'nitrite-form'
  | 'phosphate-form'
  | 'ammonia-form'
  | 'unit'
  | 'sg-reference'
  | 'salinity-scale'
  | 'gallon'
  | 'limit'

export interface SheetQuestion {
  /** The topic and the column it is about, such as nitrate-form:B; the key of its answer. */
  readonly id: string
  readonly topic: QuestionTopic
  readonly where: string
  readonly question: string
  readonly options: readonly string[]
  /** How many cells are not taken until it is answered; 0 where they are taken as they are. */
  readonly waiting: number
}

/** Answers by the id of the question, each one of its options (a limit: any number above 0). */
export type Answers = Readonly<Record<string, string>>

/** A cell that is no plain reading, and what became of it. */
export interface OddCell {
  readonly cell: string
  readonly asWritten: string
  readonly why: string
  readonly taken: string
}

export type ColumnRole = 'date' | 'time' | 'note' | 'parameter' | 'value' | 'unit' | 'unknown' | ReadQuantity

/** How a column was understood. */
export interface SheetColumn {
  readonly letter: string
  readonly header: string
  readonly role: ColumnRole
  readonly unit?: string
  readonly form?: string
}

/** All that a sheet says: what was read, what is asked, what is odd. Nothing is dropped in silence. */
export interface Sheet {
  readonly fileName: string
  readonly encoding: string
  readonly delimiter: string
  readonly decimal: '.' | ','
  /** Lines above the header. */
  readonly titles: readonly string[]
  readonly headerRow: number
  readonly layout: 'wide' | 'long'
  readonly columns: readonly SheetColumn[]
  readonly readings: readonly SheetReading[]
  readonly notes: readonly SheetNote[]
  readonly questions: readonly SheetQuestion[]
  readonly odd: readonly OddCell[]
  readonly issues: readonly Issue[]
}
