import type { Issue } from '../issue.ts'
import type { Kept } from '../logbook.ts'
import { Unreadable } from '../sheet/book/book.ts'
import { cutOff } from './faults.ts'
import type { Head } from './gather.ts'
import { readJson } from './read-json.ts'
import { readRows } from './read-rows.ts'
import { exportFormatOf } from './recognise.ts'
import { csvRows, xlsxRows } from './rows-of.ts'

/** All that an export holds. */
export interface ExportContents {
  readonly head: Head
  /** In the order of receipt. */
  readonly entries: readonly Kept[]
  readonly attachments: readonly ExportedFile[]
}

/** An attachment with its bytes, which are those of its name. */
export interface ExportedFile {
  readonly sha256: string
  readonly type: string
  readonly bytes: Uint8Array
}

/** An export read whole, or all that is wrong with it. */
export type ExportRead =
  | { readonly ok: true; readonly contents: ExportContents }
  | { readonly ok: false; readonly issues: readonly Issue[] }

/** Whether a file is an export of this program, in any of its forms, also after another program saved it anew. */
export const isExport = (bytes: Uint8Array): boolean => exportFormatOf(bytes) !== undefined

/** Reads an export whole: what is missing, cut off or changed is refused, and nothing is left out. */
export function readExport(bytes: Uint8Array): ExportRead {
  try {
    switch (exportFormatOf(bytes)) {
      case 'json':
        return readJson(bytes)
      case 'csv':
        return readRows(csvRows(bytes))
      case 'xlsx':
        return readRows(xlsxRows(bytes))
      case undefined:
        return { ok: false, issues: [notOurs] }
    }
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, issues: [cutOff(whyUnreadable(error))] }
    throw error
  }
}

function whyUnreadable({ problem }: Unreadable): string {
  const why =
    'why' in problem
      ? problem.why
      : 'most' in problem
        ? `more than ${problem.most} ${problem.what}`
        : problem.code
  return `it cannot be read (${why})`
}

const notOurs: Issue = {
  code: 'not-an-export',
  where: 'File',
  got: 'it is no export of Holdfast',
  accepted: 'A file that "holdfast export" wrote: JSON, CSV or XLSX.',
  next: 'A spreadsheet of your own goes in with "holdfast import" too. Nothing was stored.',
}
