import { createHash } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Entry, type Issue, type Logbook, Refused, readEntry, readSystemFile } from '@holdfast/logbook'

/**
 * Puts the example systems into a logbook that has nothing in it yet, so that a first start has
 * something to look at. They are systems like any other from then on.
 *
 * @param folders  each with system.json (a system file) and log.json (a list of entries)
 * @returns whether any was put in
 * @throws Refused with every issue of the two files of a folder; nothing is stored then
 */
export async function putExamplesIn(
  logbook: Logbook,
  folders: readonly string[],
  now: Date,
): Promise<boolean> {
  const there = folders.filter((folder) => existsSync(join(folder, 'system.json')))
  if (there.length === 0 || (await logbook.systems()).length > 0) return false
  await logbook.append(there.flatMap((folder) => exampleEntries(folder, logbook.workspace, now)))
  return true
}

/** The entries of an example as this workspace keeps them, its description first. */
function exampleEntries(folder: string, workspace: string, now: Date): readonly Entry[] {
  const described = readSystemFile(readFileSync(join(folder, 'system.json'), 'utf8'))
  if (!described.ok) throw new Refused(described.issues)
  const { system, document } = described
  const listed: unknown = JSON.parse(readFileSync(join(folder, 'log.json'), 'utf8'))
  if (!Array.isArray(listed)) throw new Refused([noList])
  const reads = listed.map((one: unknown) =>
    readEntry(typeof one === 'object' ? { ...one, workspace, system: system.id } : one),
  )
  const issues = reads.flatMap((read) => (read.ok ? [] : read.issues))
  if (issues.length > 0) throw new Refused(issues)
  const log = reads.flatMap((read) => (read.ok ? [read.entry] : []))
  if (log.some(({ kind }) => kind === 'system')) return log
  const days = log.map(({ at }) => at.slice(0, 10)).sort()
  const description: Entry = {
    id: idOf(`description of ${system.id}`),
    workspace,
    system: system.id,
    kind: 'system',
    v: 1,
    at: days[0] ?? now.toISOString().slice(0, 10),
    precision: 'day',
    madeAt: now.toISOString(),
    by: 'example',
    device: 'example',
    body: { tells: 'change', document: { ...document }, system },
  }
  return [description, ...log]
}

const noList: Issue = {
  code: 'no-list',
  where: 'log.json of the example',
  got: 'it is no list',
  accepted: 'A list of entries.',
  next: 'Take the folder of examples from a fresh copy of Holdfast.',
}

/** The same UUID (version 8) for the same text, so that two first starts at once put in one example. */
function idOf(text: string): string {
  const hex = createHash('sha256').update(text).digest('hex')
  const variant = '89ab'[Number.parseInt(hex[16] ?? '0', 16) % 4]
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `${variant}${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join('-')
}
