import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

import { nitrate } from '../../conformance/nitrate.ts'
import type { Logbook } from '../../logbook.ts'
import { openLogbook } from '../../sqlite/open.ts'

/** A folder that is gone when the test has ended. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'copies-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

/** The log of a folder, open until the test has ended. */
export function opened(folder: string): Logbook {
  const log = openLogbook({ folder })
  if (!log.ok) throw new Error(JSON.stringify(log.issues))
  onTestFinished(() => log.logbook.close())
  return log.logbook
}

/** A photograph, as far as a store can tell. */
export const photograph = new Uint8Array(5000).map((_, place) => (place * 7) % 251)

/** A data folder with some readings and a photograph; its log is open. */
export async function keptLog(readings = 3): Promise<{ readonly folder: string; readonly logbook: Logbook }> {
  const folder = temporaryFolder()
  const logbook = opened(folder)
  await logbook.append(Array.from({ length: readings }, (_, number) => nitrate(number)))
  await logbook.attach(photograph, 'image/png')
  return { folder, logbook }
}
