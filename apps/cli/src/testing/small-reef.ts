import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { hall } from '@holdfast/logbook/testing/hall.ts'
import { onTestFinished } from 'vitest'

/** A folder that is gone when the test has ended. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'cli-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** A file in a folder of its own. */
export function fileWith(name: string, content: string | Uint8Array): string {
  const file = join(temporaryFolder(), name)
  writeFileSync(file, content)
  return file
}

/** The reef as a system file, with changes. */
export const systemFile = (changes: Readonly<Record<string, unknown>> = {}): string =>
  fileWith('hall.json', JSON.stringify({ ...hall, ...changes }))
