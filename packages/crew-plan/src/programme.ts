/** An integer programme as data: least cost, within rows and bounds. No solver in sight. */
export interface Programme {
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
}

export interface Column {
  readonly cost: number
  readonly lower: number
  /** Infinity for none. */
  readonly upper: number
  readonly whole: boolean
}

/** A sum of columns between two ends; -Infinity and Infinity for none. */
export interface Row {
  readonly terms: readonly (readonly [column: number, factor: number])[]
  readonly lower: number
  readonly upper: number
  /** Which limit it is, for the words of a clash. */
  readonly limit: string
}

/** Builds a programme column by column and row by row. */
export class ProgrammeBuilder {
  readonly columns: Column[] = []
  readonly rows: Row[] = []

  /** @returns index of the new column */
  column({ cost = 0, lower = 0, upper = Number.POSITIVE_INFINITY, whole = false }: Partial<Column>): number {
    return this.columns.push({ cost, lower, upper, whole }) - 1
  }

  /** Lowers the upper end of a column; never raises it. */
  limit(column: number, upper: number): void {
    const known = this.columns[column]
    this.columns[column] = { ...known, upper: Math.max(known.lower, Math.min(known.upper, upper)) }
  }

  atMost(limit: string, terms: Row['terms'], upper: number): void {
    this.row({ limit, terms, lower: Number.NEGATIVE_INFINITY, upper })
  }

  atLeast(limit: string, terms: Row['terms'], lower: number): void {
    this.row({ limit, terms, lower, upper: Number.POSITIVE_INFINITY })
  }

  private row(row: Row): void {
    const terms = row.terms.filter(([, factor]) => factor !== 0)
    if (terms.length > 0) this.rows.push({ ...row, terms })
  }
}
