import { unzipSync } from 'fflate'

import type { ExportFormat } from './formats.ts'
import { wholeHeading } from './table.ts'

/** The form of an export of this program, told by what it holds and never by its name; undefined for other files. */
export function exportFormatOf(bytes: Uint8Array): ExportFormat | undefined {
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return holdsSheetOfOurs(bytes) ? 'xlsx' : undefined
  const start = new TextDecoder().decode(bytes.subarray(0, 2000)).trimStart()
  if (/^\{\s*"format"\s*:\s*"holdfast-export"/.test(start)) return 'json'
  const [firstLine] = start.split(/\r?\n/)
  return firstLine.includes(wholeHeading) ? 'csv' : undefined
}

/** The name of the sheet stays when another program saves the workbook anew. */
function holdsSheetOfOurs(bytes: Uint8Array): boolean {
  try {
    const parts = unzipSync(bytes, {
      filter: ({ name, originalSize }) => name === 'xl/workbook.xml' && originalSize < 1_000_000,
    })
    const contents = parts['xl/workbook.xml']
    return contents !== undefined && new TextDecoder().decode(contents).includes('name="Holdfast log"')
  } catch {
    return false
  }
}
