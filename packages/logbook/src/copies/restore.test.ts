import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import type { Issue, Refused } from '../issue.ts'
import { openLogbook } from '../sqlite/open.ts'
import { backUp } from './back-up.ts'
import { restore } from './restore.ts'
import { keptLog, opened, photograph, temporaryFolder } from './testing/kept-log.ts'

const now = new Date('2026-02-01T08:00:00Z')
const backupOf = async (readings: number): Promise<string> => {
  const { folder } = await keptLog(readings)
  return (await backUp({ folder, to: temporaryFolder(), now, made: 'by hand' })).folder
}
/** A data folder whose log no program has open. */
const closedLog = async (readings: number): Promise<string> => {
  const folder = temporaryFolder()
  await restore({ folder, from: await backupOf(readings), now })
  return folder
}
const issuesOf = (attempt: Promise<unknown>): Promise<readonly Issue[]> =>
  attempt.then(
    () => [],
    (error: Refused) => error.issues,
  )

test('a backup brings entries and attachments to a machine where there was nothing', async () => {
  const { folder, logbook } = await keptLog(5)
  const [attached] = await logbook.attachments()
  const { folder: from } = await backUp({ folder, to: temporaryFolder(), now, made: 'by hand' })
  const elsewhere = join(temporaryFolder(), 'new')
  expect(await restore({ folder: elsewhere, from, now })).toEqual({ entries: 5 })
  const restored = opened(elsewhere)
  expect(await restored.asSent()).toEqual(await logbook.asSent())
  expect((await restored.attachment(attached.sha256))?.bytes).toEqual(photograph)
})

test('the log that was there is kept, and restoring it undoes the restoring, within one second too', async () => {
  const folder = await closedLog(7)
  const { entries, kept } = await restore({ folder, from: await backupOf(2), now })
  expect(entries).toBe(2)
  expect(kept).toBe(join(folder, 'holdfast.before-restore.2026-02-01T08-00-00.db'))
  expect(await restore({ folder, from: kept ?? '', now })).toMatchObject({
    entries: 7,
    kept: join(folder, 'holdfast.before-restore.2026-02-01T08-00-00-2.db'),
  })
  expect(await opened(folder).read()).toHaveLength(7)
})

test('a damaged log makes room for the backup and is kept byte by byte, its journal too', async () => {
  const folder = temporaryFolder()
  writeFileSync(join(folder, 'holdfast.db'), 'no log at all')
  writeFileSync(join(folder, 'holdfast.db-wal'), 'its journal')
  const { kept } = await restore({ folder, from: await backupOf(4), now })
  expect(readFileSync(kept ?? '', 'utf8')).toBe('no log at all')
  expect(readFileSync(`${kept}-wal`, 'utf8')).toBe('its journal')
  expect(existsSync(join(folder, 'holdfast.db-wal'))).toBe(false)
  expect(await opened(folder).read()).toHaveLength(4)
})

test('an attachment that was damaged is mended, and others stay', async () => {
  const folder = await closedLog(1)
  const [name] = readdirSync(join(folder, 'attachments'))
  writeFileSync(join(folder, 'attachments', name), 'damaged')
  writeFileSync(join(folder, 'attachments', 'other'), 'stays')
  await restore({ folder, from: await backupOf(1), now })
  expect(readFileSync(join(folder, 'attachments', name))).toEqual(Buffer.from(photograph))
  expect(readdirSync(join(folder, 'attachments')).sort()).toEqual([name, 'other'])
})

test('nothing is restored over a log that another program has open', async () => {
  const { folder, logbook } = await keptLog(3)
  const issues = await issuesOf(restore({ folder, from: await backupOf(1), now }))
  expect(issues.map(({ code }) => code)).toEqual(['log-in-use'])
  await logbook.append([nitrate(9)])
  expect(readdirSync(folder).filter((name) => /restor/.test(name))).toEqual([])
  expect(await opened(folder).read()).toHaveLength(4)
})

test('nothing is restored below a running server, which is named', async () => {
  const server = createServer((_, response) => response.end('{"start":"this one"}'))
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  onTestFinished(() => void server.close())
  const address = server.address()
  const port = typeof address === 'object' ? address?.port : undefined
  const folder = await closedLog(1)
  writeFileSync(join(folder, 'running.json'), JSON.stringify({ start: 'this one', pid: 1, port }))
  const [issue] = await issuesOf(restore({ folder, from: await backupOf(2), now }))
  expect(issue).toMatchObject({
    code: 'log-in-use',
    got: `Holdfast runs on it, at http://localhost:${port}`,
  })
  rmSync(join(folder, 'running.json'))
  expect(await opened(folder).read()).toHaveLength(1)
})

test('a backup that is not whole changes nothing, and every fault is said', async () => {
  const folder = await closedLog(3)
  const from = await backupOf(2)
  writeFileSync(join(from, 'holdfast.db'), 'cut')
  rmSync(join(from, 'attachments'), { recursive: true })
  const before = readdirSync(folder)
  expect(await issuesOf(restore({ folder, from, now }))).toHaveLength(2)
  expect(await issuesOf(restore({ folder, from: temporaryFolder(), now }))).toMatchObject([
    { code: 'no-backup' },
  ])
  expect(readdirSync(folder)).toEqual(before)
  const log = openLogbook({ folder })
  expect(log.ok && (await log.logbook.read())).toHaveLength(3)
})
