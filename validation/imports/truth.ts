/** What a careful person takes from a sheet; the keys are those of the truth files. */
export interface Truth {
  readonly file: string
  readonly readings: readonly TrueReading[]
  readonly ambiguous: readonly TrueQuestion[]
  readonly odd_cells: readonly TrueOdd[]
}

export interface TrueReading {
  readonly date: string
  readonly time?: string
  readonly half_day?: 'am' | 'pm'
  readonly quantity: string
  readonly value: number | string | null
  readonly below_detection: boolean
  readonly unit_as_written: string | null
  readonly cell: string
  readonly interval?: readonly [number, number]
  readonly approximate?: boolean
  readonly above_range?: boolean
  readonly suspect?: boolean
  readonly likely?: number
  readonly value_if_as_written?: number
  readonly date_as_written?: string
  readonly first_value?: number
  readonly zero_as_written?: boolean
  readonly system?: string
  readonly event?: TrueEvent
}

export interface TrueEvent {
  readonly kind?: string
  readonly volume_L?: number
  readonly mass_g?: number
  readonly animals_added?: number
  readonly hours?: number
  readonly quantity?: string
}

export interface TrueQuestion {
  readonly id: string
  readonly where: string
  readonly question: string
  readonly options: readonly string[]
  readonly assumed: string
}

export interface TrueOdd {
  readonly cell: string
  readonly as_written: string
  readonly why: string
  readonly expect: string
}
