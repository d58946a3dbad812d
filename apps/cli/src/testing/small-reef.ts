import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { hall } from '@holdfast/logbook/testing/hall.ts'
import { temporaryFolder } from '@holdfast/testing'

/** A file in a folder of its own. */
export function fileWith(name: string, content: string | Uint8Array): string {
  const file = join(temporaryFolder(), name)
  writeFileSync(file, content)
  return file
}

/** The reef as a system file, with changes. */
export const systemFile = (changes: Readonly<Record<string, unknown>> = {}): string =>
  fileWith('hall.json', JSON.stringify({ ...hall, ...changes }))
