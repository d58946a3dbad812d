import { readdirSync, readFileSync } from 'node:fs'

import { Refused } from '../../issue.ts'
import type { Logbook, Sent } from '../../logbook.ts'
import { type ExportFormat, exportFormats, exportLog } from '../formats.ts'
import { readExport } from '../read-export.ts'
import { type TakenOver, takeOverExport } from '../take-over.ts'

export const formats = Object.keys(exportFormats) as ExportFormat[]

/** The whole log as a file of a form. */
export async function exported(logbook: Logbook, format: ExportFormat): Promise<Buffer> {
  const parts: Uint8Array[] = []
  for await (const part of exportLog(logbook, format, new Date('2026-03-01T12:00:00.000Z'))) parts.push(part)
  return Buffer.concat(parts)
}

/** Takes over what a file holds. @throws Refused */
export async function takenOver(logbook: Logbook, bytes: Uint8Array): Promise<TakenOver> {
  const read = readExport(bytes)
  if (!read.ok) throw new Refused(read.issues)
  return takeOverExport(logbook, read.contents)
}

const folder = new URL('../../entries/samples/', import.meta.url)

/** An entry of every kind and version there ever was. */
export const samples: readonly Sent[] = readdirSync(folder).map((name) => ({
  ...JSON.parse(readFileSync(new URL(name, folder), 'utf8')),
  workspace: 'home',
}))
