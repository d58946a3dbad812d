import { v5 } from 'uuid'

import type { EntryOf, Stored } from '../entries/entry.ts'
import { standing } from '../entries/standing.ts'
import type { ImportInto } from './entries-from-sheet.ts'
import type { Answers, QuestionTopic, Sheet } from './sheet.ts'

/** Namespace of the fingerprints of headings; made once for this project and never changed. */
const namespace = 'b7a1c0de-5d0f-4f0c-9d53-1f2f6a6f3c84'

/** What an import keeps for the next sheet of the same shape. */
export interface Remembered {
  readonly answers: Answers
  /** Which system each tank of the sheet was. */
  readonly tanks: Readonly<Record<string, string>>
}

/** Questions about a column or the whole sheet; those about one cell or one stretch end with their sheet. */
const lasting: readonly QuestionTopic[] = [
  'date-order',
  'nitrate-form',
  'nitrite-form',
  'phosphate-form',
  'ammonia-form',
  'unit',
  'sg-reference',
  'salinity-scale',
  'gallon',
  'limit',
]

const nothing: Remembered = { answers: {}, tanks: {} }

/**
 * What was answered when a sheet with these headings was last imported. It is kept in a note of that import
 * and goes with it when the import is undone.
 */
export function rememberedFor(sheet: Sheet, stored: readonly Stored[]): Remembered {
  const shape = fingerprint(sheet)
  const notes = standing(stored).filter((entry) => entry.kind === 'note')
  return notes.map(({ body }) => keptIn(body, shape)).findLast((kept) => kept !== undefined) ?? nothing
}

/**
 * The note of an import in which answers were given; undefined where there were none. It stands on the last
 * day of the sheet, so that importing a log of the past leaves it one.
 */
export function noteOfImport(
  sheet: Sheet,
  { answers, tanks }: Remembered,
  into: ImportInto,
): EntryOf<'note'> | undefined {
  const kept = Object.fromEntries(
    Object.entries(answers).filter(([id]) => lasting.some((topic) => id.startsWith(`${topic}:`))),
  )
  const [at] = [...sheet.readings, ...sheet.notes]
    .map(({ date }) => date)
    .toSorted()
    .reverse()
  const said = [...Object.entries(kept), ...Object.entries(tanks)].map(([id, answer]) => `${id}=${answer}`)
  if (said.length === 0 || at === undefined) return undefined
  const { workspace, system, by, device, madeAt, batch } = into
  const body = {
    text: `Imported "${sheet.fileName}". Answered: ${said.join(', ')}.`,
    import: { shape: fingerprint(sheet), answers: kept, tanks },
  }
  const id = v5(`${batch} ${system}`, namespace)
  return { id, workspace, system, kind: 'note', v: 1, at, precision: 'day', madeAt, by, device, batch, body }
}

const fingerprint = ({ shape }: Sheet): string => v5(shape, namespace)

function keptIn(body: Readonly<Record<string, unknown>>, shape: string): Remembered | undefined {
  const { import: kept } = body
  if (!isRecord(kept) || kept.shape !== shape) return undefined
  return { answers: textsIn(kept.answers), tanks: textsIn(kept.tanks) }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null

function textsIn(value: unknown): Readonly<Record<string, string>> {
  if (!isRecord(value)) return {}
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, text]) => (typeof text === 'string' ? [[key, text]] : [])),
  )
}
