import type { Answers, Issue, Mended, OddCell, SheetColumn, SheetQuestion } from '@holdfast/logbook'
import type { SystemName } from '../../shell/system-data.ts'
import type { Noted } from './notes.ts'
import type { Series } from './series.ts'

/** What the keeper settled about a sheet. */
export interface Settled {
  /** Whose readings they are, where the sheet does not tell tanks apart. */
  readonly system: string
  readonly answers: Answers
  /** The system of each tank that the sheet tells apart, or `leftOutTank`. */
  readonly tanks: Readonly<Record<string, string>>
  /** Cells that are not to be stored, such as B7. */
  readonly leftOut: readonly string[]
}

/** What a tank is given whose readings are not wanted; it is kept so in the note of an import. */
export const leftOutTank = 'none'

/** A sheet to be read and held against the log. */
export interface SheetAsked {
  /** Counts the sheets of a page: the same number, the same file. */
  readonly number: number
  readonly file: Blob
  readonly fileName: string
  /** Left out: as for the last sheet with these headings. */
  readonly settled?: Settled
  /** Address of the server, since a worker has one of its own. */
  readonly server: string
  readonly workspace: string
  /** The system that is shown: the sheet is taken to be of it, until the keeper says otherwise. */
  readonly system: string
  /** IANA zone of the system. */
  readonly timeZone: string
  readonly batch: string
}

/** The first of many, and how many there are. */
export interface Listed<Item> {
  readonly first: readonly Item[]
  readonly all: number
}

/** A question with its answer, where it has one. */
export interface Asked extends Omit<SheetQuestion, 'cells'> {
  readonly cells: Listed<string>
  readonly answer?: string
}

/** What storing a sheet would do; the entries themselves stay in the worker. */
export interface Preview {
  readonly fileName: string
  /** Every system of the log. */
  readonly systems: readonly SystemName[]
  /** How the file was read. */
  readonly form: string
  readonly titles: readonly string[]
  readonly series: readonly Series[]
  /** Columns that are no series of readings. */
  readonly columns: readonly SheetColumn[]
  readonly tanks: readonly string[]
  /** Whether something in it is of no tank that the sheet names. */
  readonly isUntanked: boolean
  readonly questions: readonly Asked[]
  readonly odd: Listed<OddCell>
  /** Those of them that are stored unless they are left out. */
  readonly takenOdd: readonly string[]
  readonly notes: Listed<Noted>
  readonly mended: Listed<Mended>
  /** New entries by kind. */
  readonly fresh: Readonly<Record<string, number>>
  readonly already: number
  readonly takenBack: number
  readonly unplaced: readonly string[]
  /** Ids of the systems that entries go to. */
  readonly into: readonly string[]
  /** As it was asked, or as it was remembered. */
  readonly settled: Settled
  /** Whether answers came from an import before. */
  readonly isRemembered: boolean
}

export type ToWorker =
  | { readonly type: 'read'; readonly asked: SheetAsked }
  /** Sends what was read last, or what is left of it. */
  | { readonly type: 'store' }

export type Stage = 'reading' | 'comparing'

export type FromWorker =
  | { readonly type: 'stage'; readonly stage: Stage }
  | { readonly type: 'read'; readonly preview: Preview }
  /** The sheet is none that can be read. */
  | { readonly type: 'refused'; readonly issues: readonly Issue[] }
  /** The log could not be asked. */
  | { readonly type: 'failed'; readonly issues: readonly Issue[] }
  | { readonly type: 'sent'; readonly sent: number; readonly of: number }
  | { readonly type: 'unsent'; readonly sent: number; readonly of: number; readonly issues: readonly Issue[] }
  | { readonly type: 'stored' }
