import type { Logbook } from '../logbook.ts'
import { type Gathered, gather } from './gather.ts'
import { writeCsv } from './write-csv.ts'
import { writeJson } from './write-json.ts'
import { writeXlsx } from './write-xlsx.ts'

interface Format {
  /** Media type. */
  readonly type: string
  readonly write: (log: Gathered) => AsyncGenerator<string | Uint8Array>
}

/** The forms of an export, by the ending of the file; each holds everything. */
export const exportFormats = {
  json: { type: 'application/json', write: writeJson },
  csv: { type: 'text/csv; charset=utf-8', write: writeCsv },
  xlsx: { type: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet', write: writeXlsx },
} as const satisfies Readonly<Record<string, Format>>

export type ExportFormat = keyof typeof exportFormats

export const isExportFormat = (name: string): name is ExportFormat => Object.hasOwn(exportFormats, name)

/** Texts are put together to parts of about this many characters: a sending of its own each costs time. */
const together = 1 << 16

/**
 * The whole log in one of the forms, in parts as they are written.
 *
 * @throws Refused before the first part, where entries cannot be read
 */
export async function* exportLog(
  logbook: Logbook,
  format: ExportFormat,
  now: Date,
): AsyncGenerator<Uint8Array> {
  let text = ''
  for await (const part of exportFormats[format].write(await gather(logbook, now))) {
    if (typeof part !== 'string') {
      yield part
      continue
    }
    text += part
    if (text.length < together) continue
    yield Buffer.from(text)
    text = ''
  }
  if (text !== '') yield Buffer.from(text)
}
