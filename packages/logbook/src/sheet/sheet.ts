import type { ReadQuantity } from '../entries/reading.ts'
import type { Issue } from '../issue.ts'
import type { Role } from './words/names.ts'

/** One reading as the sheet gives it, in the canonical unit of its quantity. */
export interface SheetReading {
  readonly date: string
  readonly time?: string
  /** Morning or evening, where the sheet says no more. */
  readonly half?: 'am' | 'pm'
  /** The date cell, where an answer mended it. */
  readonly dateAsWritten?: string
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
  readonly kit?: string
  /** Which tank, where the sheet holds several. */
  readonly tank?: string
  /** What stands beside the reading. */
  readonly remark?: string
  /** True where the reading is far from its neighbours or an answer changed what is written. */
  readonly suspect?: true
  /** The value that was likely meant, in the canonical unit. */
  readonly likely?: number
  /** The value without the answer that changed it. */
  readonly valueAsWritten?: number
  /** The other number in the same cell. */
  readonly firstValue?: number
  /** A1 style, after the name of the sheet in a workbook; in a text the row counts records from 1. */
  readonly cell: string
}

/** What a note says in a form that can be logged; proposed, not yet an entry. */
export type NoteEvent =
  | { readonly kind: 'water-change'; readonly volume_L: number }
  | { readonly kind: 'media'; readonly action: 'placed' | 'replaced'; readonly mass_g: number }
  | { readonly kind: 'animals'; readonly count: number; readonly named: string }
  | { readonly kind: 'kit-change'; readonly quantity?: ReadQuantity }
  | {
      readonly kind: 'unit-change'
      readonly quantity: ReadQuantity
      readonly form?: string
      readonly unit?: string
    }
  | { readonly kind: 'equipment-off'; readonly hours: number }

export interface SheetNote {
  readonly date: string
  readonly time?: string
  readonly half?: 'am' | 'pm'
  readonly dateAsWritten?: string
  readonly tank?: string
  readonly text: string
  readonly cell: string
  readonly events: readonly NoteEvent[]
}

/** What the sheet leaves open. */
export type QuestionTopic =
  | 'date-order'
  | 'date'
  | 'year'
  | 'nitrate-form'
  | 'nitrite-form'
  | 'phosphate-form'
  | 'ammonia-form'
  | 'unit'
  | 'unit-slip'
  | 'sg-reference'
  | 'salinity-scale'
  | 'gallon'
  | 'limit'
  | 'value'
  | 'kit-change'

export interface SheetQuestion {
  /** The topic and the column or cell it is about, such as nitrate-form:B; the key of its answer. */
  readonly id: string
  readonly topic: QuestionTopic
  readonly where: string
  readonly question: string
  /** Empty where any figure is an answer. */
  readonly options: readonly string[]
  /** The option that the sheet itself speaks for; never taken without the keeper. */
  readonly likely?: string
  /** The cells that it is about. */
  readonly cells: readonly string[]
  /** What stands in the first few of them. */
  readonly written: readonly string[]
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
  /** What was likely meant. */
  readonly likely?: string
}

/** How a column was understood. */
export interface SheetColumn {
  readonly sheet?: string
  /** Letter of the column, or number of the row where dates run across. */
  readonly letter: string
  readonly header: string
  readonly role: Role | ReadQuantity | 'reckoned' | 'unknown'
  readonly unit?: string
  readonly form?: string
  readonly tank?: string
}

/** All that a sheet says: what was read, what is asked, what is odd. Nothing is dropped in silence. */
export interface Sheet {
  readonly fileName: string
  readonly encoding: string
  readonly delimiter: string
  readonly decimal: '.' | ','
  /** Lines above the headers. */
  readonly titles: readonly string[]
  /** Row of the first header, from 1; 0 where none was found. */
  readonly headerRow: number
  readonly layout: 'wide' | 'long' | 'across'
  readonly columns: readonly SheetColumn[]
  /** The tanks that the sheet tells apart. */
  readonly tanks: readonly string[]
  /** Made of all headings: two sheets of the same shape have the same, and the same questions. */
  readonly shape: string
  readonly readings: readonly SheetReading[]
  readonly notes: readonly SheetNote[]
  readonly questions: readonly SheetQuestion[]
  readonly odd: readonly OddCell[]
  /** Every cell that held something was read, waits for an answer, or is listed: held is the sum of these. */
  readonly cells: {
    readonly held: number
    readonly read: number
    readonly waiting: number
    readonly listed: number
  }
  readonly issues: readonly Issue[]
}
