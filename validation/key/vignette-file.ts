/** The form of a file of vignettes: a growth as a keeper noted it, and what it was. */
import { type Answers, fieldKey, issueInWords, readAnswers } from '@holdfast/identification'
import papa from 'papaparse'

export interface Vignette {
  readonly id: string
  readonly answers: Answers
  readonly kind: string
}

const columns = ['id', 'description', 'traits', 'expected_kind'] as const
type Row = Readonly<Record<string, string | undefined>>

/** The vignettes of a file, what is wrong with single rows, and what is wrong with the file as a whole. */
export interface VignettesRead {
  readonly vignettes: readonly Vignette[]
  /** A line a row that could not be read. */
  readonly wrongRows: readonly string[]
  readonly wrongFile: readonly string[]
}

/** @param text a CSV with the columns id, description, traits (JSON), expected_kind; others are for people */
export function readVignettes(text: string): VignettesRead {
  const { data, errors, meta } = papa.parse<Row>(text, {
    header: true,
    delimiter: ',',
    skipEmptyLines: 'greedy',
    transformHeader: (name) => name.replace(/^\uFEFF/, '').trim(),
  })
  const absent = columns.filter((column) => !(meta.fields ?? []).includes(column))
  const wrongFile = [
    ...absent.map((column) => `The file has no column "${column}". It needs ${columns.join(', ')}.`),
    ...errors.map(({ message, row }) => `${row === undefined ? 'File' : `Row ${row + 1}`}: ${message}.`),
    ...(data.length === 0
      ? ['The file holds no vignette. Give one a row under the names of the columns.']
      : []),
  ]
  if (wrongFile.length > 0) return { vignettes: [], wrongRows: [], wrongFile }
  const rows = data.map((row, i) => readRow(row, i + 1))
  return {
    vignettes: rows.filter((row) => typeof row !== 'string'),
    wrongRows: rows.filter((row) => typeof row === 'string'),
    wrongFile,
  }
}

/** A vignette, or in one line all that is wrong with it. */
function readRow(row: Row, number: number): Vignette | string {
  const id = row.id?.trim() || `row ${number}`
  const kind = row.expected_kind?.trim() ?? ''
  const read = readAnswers(parsed(row.traits ?? ''))
  const kinds = fieldKey.kinds.map(({ key }) => key)
  const issues = [
    ...(read.ok ? [] : read.issues.map(issueInWords)),
    ...(kinds.includes(kind)
      ? []
      : [`expected_kind: "${kind}" is not known. Give one of ${kinds.join(', ')}.`]),
  ]
  return read.ok && issues.length === 0 ? { id, answers: read.answers, kind } : `${id}: ${issues.join(' ')}`
}

/** What the JSON says, or the text itself where it is none: then it is refused with the other issues. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}
