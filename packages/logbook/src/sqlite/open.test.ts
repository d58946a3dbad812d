import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, readdirSync } from 'node:fs'
import {
  chmod,
  copyFile,
  mkdir,
  mkdtemp,
  open,
  readFile,
  rm,
  stat,
  truncate,
  writeFile,
} from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Database from 'libsql'
import { afterEach, beforeEach, expect, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import { migrate, migrations, pragmaNumber } from './migrations.ts'
import { openLogbook } from './open.ts'

let folder: string
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'log-'))
})
afterEach(() => rm(folder, { recursive: true, force: true }))

/** A log with as many readings, closed. */
async function logOf(readings: number): Promise<string> {
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  await opened.logbook.append(Array.from({ length: readings }, (_, number) => nitrate(number)))
  await opened.logbook.close()
  return opened.file
}

async function overwrite(path: string, at: number, bytes: Buffer): Promise<void> {
  const file = await open(path, 'r+')
  await file.write(bytes, 0, bytes.length, at)
  await file.close()
}

const codesIn = (where: string): readonly string[] => {
  const opened = openLogbook({ folder: where })
  if (opened.ok) throw new Error('the log opened')
  return opened.issues.map((issue) => issue.code)
}

test('a folder that is missing is made, and the log in it writes ahead', async () => {
  const deep = join(folder, 'a', 'b')
  const opened = openLogbook({ folder: deep })
  if (!opened.ok) throw new Error('not opened')
  expect(existsSync(join(deep, 'holdfast.db'))).toBe(true)
  const database = new Database(opened.file)
  expect(database.prepare('PRAGMA journal_mode').all()).toEqual([{ journal_mode: 'wal' }])
  database.close()
  await opened.logbook.close()
})

test('an entry that was acknowledged survives a kill -9 right after', async () => {
  const writer = fileURLToPath(new URL('./testing/acknowledge.mjs', import.meta.url))
  const child = spawn(process.execPath, [writer, folder], { stdio: ['ignore', 'pipe', 'inherit'] })
  const said = once(child.stdout, 'data')
  const ended = once(child, 'exit')
  expect(String((await Promise.race([said, ended]))[0]).trim()).toBe('acknowledged')
  child.kill('SIGKILL')
  expect((await ended)[1]).toBe('SIGKILL')
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  expect(await opened.logbook.read()).toMatchObject([{ id: nitrate(7).id }])
  await opened.logbook.close()
})

test('a file that is no database is refused and left as it was', async () => {
  const file = join(folder, 'holdfast.db')
  await writeFile(file, 'no database at all, '.repeat(500))
  expect(codesIn(folder)).toEqual(['damaged-file'])
  expect(await readFile(file, 'utf8')).toMatch(/^no database at all/)
})

test('a log whose pages were overwritten is refused', async () => {
  const file = await logOf(200)
  await overwrite(file, 8192, Buffer.alloc(8000, 0x5a))
  expect(codesIn(folder)).toEqual(['damaged-file'])
})

test('a log in which one digit of one reading was changed is refused', async () => {
  const file = await logOf(20)
  // Pages that were split keep what moved away, so the text may stand in the file more than once.
  const bytes = await readFile(file, 'latin1')
  await writeFile(file, bytes.replaceAll('"value":7,', '"value":8,'), 'latin1')
  const database = new Database(file)
  expect(database.prepare('PRAGMA quick_check').all()).toEqual([{ quick_check: 'ok' }])
  database.close()
  expect(codesIn(folder)).toEqual(['damaged-file'])
})

test.for([0, 1000, 4096, 12_288])('a log cut off after %i bytes is refused and left so', async (length) => {
  const file = await logOf(200)
  await truncate(file, length)
  expect(codesIn(folder)).toEqual(['damaged-file'])
  expect((await stat(file)).size).toBe(length)
})

test('the file alone holds everything after each write and after the end', async () => {
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  const elsewhere = join(folder, 'elsewhere')
  await mkdir(elsewhere)
  const entriesOfCopy = async (): Promise<number> => {
    await copyFile(opened.file, join(elsewhere, 'holdfast.db'))
    const copy = openLogbook({ folder: elsewhere })
    if (!copy.ok) throw new Error('not opened')
    const { length } = await copy.logbook.read()
    await copy.logbook.close()
    return length
  }
  await opened.logbook.append([nitrate(1)])
  expect(await entriesOfCopy()).toBe(1)
  await opened.logbook.append([nitrate(2)])
  await opened.logbook.close()
  expect(await entriesOfCopy()).toBe(2)
  // SQLite may leave the file of what is not yet in the database empty, or take it away.
  expect((await stat(`${opened.file}-wal`).catch(() => ({ size: 0 }))).size).toBe(0)
})

test('a log that another program is writing to is waited for, and then named', async () => {
  const opened = openLogbook({ folder, patience: 50 })
  if (!opened.ok) throw new Error('not opened')
  const other = new Database(opened.file)
  other.exec('BEGIN IMMEDIATE')
  const refused = await opened.logbook.append([nitrate(1)]).catch((error: unknown) => error)
  expect(refused).toMatchObject({ issues: [{ code: 'log-not-written' }] })
  expect(await opened.logbook.read()).toEqual([])
  other.exec('COMMIT')
  other.close()
  expect((await opened.logbook.append([nitrate(1)])).added).toHaveLength(1)
  await opened.logbook.close()
})

test('a log that another program is just making is waited for, and then named', () => {
  const other = new Database(join(folder, 'holdfast.db'))
  other.exec('BEGIN EXCLUSIVE')
  const refused = openLogbook({ folder, patience: 50 })
  expect(refused).toMatchObject({ ok: false, issues: [{ code: 'log-not-opened' }] })
  other.exec('COMMIT')
  other.close()
  const opened = openLogbook({ folder, patience: 50 })
  if (!opened.ok) throw new Error('not opened')
  return opened.logbook.close()
})

test('what is stored can be neither changed nor deleted', async () => {
  const database = new Database(await logOf(1))
  expect(() => database.exec("UPDATE entry SET day = '2026-01-05'")).toThrow('never changed')
  expect(() => database.exec('DELETE FROM entry')).toThrow('never deleted')
  database.close()
})

test('an attachment that is damaged or gone is refused by name, and the entries are read', async () => {
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  const { logbook } = opened
  await logbook.append([nitrate(1)])
  const [first, second] = await Promise.all(
    [1, 2].map((byte) => logbook.attach(Buffer.from([byte]), 'image/jpeg')),
  )
  await writeFile(join(folder, 'attachments', first.sha256), 'other bytes')
  await rm(join(folder, 'attachments', second.sha256))
  for (const { sha256 } of [first, second]) {
    const refused = await logbook.attachment(sha256).catch((error: unknown) => error)
    expect(refused).toMatchObject({ issues: [{ code: 'damaged-attachment' }] })
  }
  expect(await logbook.read()).toHaveLength(1)
  await logbook.close()
})

test('a log of a newer program and a database of another program are refused and left as they were', async () => {
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  await opened.logbook.close()
  const database = new Database(opened.file)
  database.exec(`PRAGMA user_version = ${migrations.length + 1}`)
  expect(codesIn(folder)).toEqual(['newer-schema'])
  database.exec('PRAGMA application_id = 1')
  expect(codesIn(folder)).toEqual(['not-our-file'])
  expect(pragmaNumber(database, 'user_version')).toBe(migrations.length + 1)
  database.close()
})

test('a folder where nothing can be written is refused by name', async () => {
  await writeFile(join(folder, 'file'), '')
  expect(codesIn(join(folder, 'file', 'below'))).toEqual(['data-folder-not-writable'])
})

// The administrator may write anywhere, so there the mode of a folder proves nothing.
test.skipIf(process.getuid?.() === 0)('a read-only folder is refused by name', async () => {
  await chmod(folder, 0o500)
  expect(codesIn(folder)).toEqual(['data-folder-not-writable'])
})

test('a log of the first schema is copied, moved and sealed, and says the same', async () => {
  const file = join(folder, 'holdfast.db')
  const database = new Database(file)
  migrate(database, () => join(folder, 'none.db'), migrations.slice(0, 1))
  const sent = [nitrate(1), nitrate(2, { replaces: nitrate(1).id })]
  for (const [place, entry] of sent.entries()) {
    const { workspace, id, system, kind, at } = entry
    const row = [
      workspace,
      id,
      place + 1,
      system,
      kind,
      at,
      '2026-02-01T08:00:00.000Z',
      JSON.stringify(entry),
    ]
    database.prepare('INSERT INTO entry VALUES (?, ?, ?, ?, ?, ?, ?, ?)').run(row)
  }
  database.close()
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  const kept = sent.map((entry) => ({ ...entry, knownAt: '2026-02-01T08:00:00.000Z' }))
  expect(await opened.logbook.read()).toEqual(kept)
  expect(await opened.logbook.read({ replacing: [nitrate(1).id] })).toHaveLength(1)
  await opened.logbook.close()
  expect(readdirSync(folder).filter((name) => name.startsWith('holdfast.before-schema-2'))).toHaveLength(1)
})

test('a log is copied before it moves to a newer schema, and moves once', async () => {
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  await opened.logbook.append([nitrate(1)])
  await opened.logbook.close()
  const database = new Database(opened.file)
  const list = [...migrations, (later: Database.Database) => later.exec('CREATE TABLE later (x TEXT)')]
  const copyTo = (schema: number): string => join(folder, `copy-${schema}.db`)
  expect(migrate(database, copyTo, list)).toBe(migrations.length)
  expect(migrate(database, copyTo, list)).toBe(list.length)
  database.close()
  expect(readdirSync(folder).filter((name) => name.startsWith('copy'))).toEqual([
    `copy-${migrations.length}.db`,
  ])
  const copy = new Database(copyTo(migrations.length))
  expect(copy.prepare('SELECT count(*) AS n FROM entry').all()).toEqual([{ n: 1 }])
  copy.close()
})
