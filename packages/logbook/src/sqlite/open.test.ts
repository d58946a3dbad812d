import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, readdirSync } from 'node:fs'
import { chmod, mkdtemp, open, readFile, rm, writeFile } from 'node:fs/promises'
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
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  await opened.logbook.append(Array.from({ length: 200 }, (_, number) => nitrate(number)))
  await opened.logbook.close()
  // The pages must lie in the file itself, not in the journal beside it.
  const database = new Database(opened.file)
  database.prepare('PRAGMA wal_checkpoint(TRUNCATE)').all()
  database.close()
  const file = await open(opened.file, 'r+')
  await file.write(Buffer.alloc(8000, 0x5a), 0, 8000, 8192)
  await file.close()
  expect(codesIn(folder)).toEqual(['damaged-file'])
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
