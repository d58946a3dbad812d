import { readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import { Refused } from '../issue.ts'
import { backUp } from './back-up.ts'
import { type Backup, backupsIn, lastGoodBackup } from './backups-in.ts'
import { checkBackup } from './check-backup.ts'
import { manifestName } from './manifest.ts'
import { keptLog, temporaryFolder } from './testing/kept-log.ts'
import { thinOut } from './thin-out.ts'

const day = (of: number): Date => new Date(Date.UTC(2026, 1, of, 8))
const backedUp = async (readings?: number): Promise<Backup> => {
  const { folder } = await keptLog(readings)
  return backUp({ folder, to: temporaryFolder(), now: day(1), made: 'by hand' })
}
const codesOf = async (folder: string): Promise<readonly string[]> => {
  const checked = await checkBackup(folder)
  return checked.ok ? [] : checked.issues.map(({ code }) => code)
}

test('a log is backed up while it is open and written to', async () => {
  const { folder, logbook } = await keptLog(3)
  const to = temporaryFolder()
  const [backup] = await Promise.all([
    backUp({ folder, to, now: day(1), made: 'by hand' }),
    logbook.append([nitrate(100)]),
  ])
  expect(backup.folder).toBe(join(to, 'holdfast-2026-02-01T08-00-00'))
  expect(backup.manifest.entries).toBeGreaterThanOrEqual(3)
  expect(backup.manifest.files.map(({ path }) => path.replace(/[0-9a-f]{64}/, 'photograph'))).toEqual([
    'holdfast.db',
    'attachments/photograph',
  ])
  expect(await checkBackup(backup.folder)).toEqual({ ok: true, manifest: backup.manifest })
  expect(await logbook.read()).toHaveLength(4)
})

test('two backups of one second have folders of their own', async () => {
  const { folder } = await keptLog()
  const to = temporaryFolder()
  for (let count = 0; count < 2; count++) await backUp({ folder, to, now: day(1), made: 'by hand' })
  expect((await backupsIn(to)).map((backup) => backup.folder)).toEqual([
    join(to, 'holdfast-2026-02-01T08-00-00'),
    join(to, 'holdfast-2026-02-01T08-00-00-2'),
  ])
})

test('one flipped bit anywhere in a backup is found', async () => {
  const { folder } = await backedUp()
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...files), fc.nat(), fc.nat(7), async (file, place, bit) => {
      const whole = readFileSync(file)
      const flipped = Buffer.from(whole)
      flipped[place % whole.length] ^= 1 << bit
      writeFileSync(file, flipped)
      const codes = await codesOf(folder)
      writeFileSync(file, whole)
      expect(codes).not.toEqual([])
    }),
    { numRuns: 60 },
  )
  expect(await codesOf(folder)).toEqual([])
})

test('a backup that was cut off, or lost a file, is none or is refused with every fault', async () => {
  const { folder, manifest } = await backedUp()
  const [log, photograph] = manifest.files.map(({ path }) => join(folder, path))
  writeFileSync(log, readFileSync(log).subarray(0, 4096))
  rmSync(photograph)
  const checked = await checkBackup(folder)
  if (checked.ok) throw new Error('the backup passed')
  expect(checked.issues.map(({ got }) => got.replace(/[0-9a-f]{64}/, 'photograph'))).toEqual([
    expect.stringMatching(/^holdfast\.db has 4096 bytes instead of \d+$/),
    'attachments/photograph is missing or cannot be read',
  ])
  rmSync(join(folder, manifestName))
  expect(await codesOf(folder)).toEqual(['no-backup'])
  expect(await backupsIn(join(folder, '..'))).toEqual([])
})

test('a backup of a newer program says so and is not called damaged', async () => {
  const { folder } = await backedUp()
  const file = join(folder, manifestName)
  writeFileSync(file, JSON.stringify({ ...JSON.parse(readFileSync(file, 'utf8')), version: 2 }))
  expect(await codesOf(folder)).toEqual(['newer-backup'])
})

test('the last good backup is the newest of which every byte is right', async () => {
  const { folder } = await keptLog()
  const to = temporaryFolder()
  const made: Backup[] = []
  for (const of of [1, 2, 3]) made.push(await backUp({ folder, to, now: day(of), made: 'daily' }))
  rmSync(join(made[2].folder, 'holdfast.db'))
  expect((await lastGoodBackup(to))?.folder).toBe(made[1].folder)
  expect(await lastGoodBackup(temporaryFolder())).toBeUndefined()
})

test('a log with a changed byte is not backed up, and leaves nothing half written', async () => {
  const { folder, logbook } = await keptLog(50)
  await logbook.close()
  const file = join(folder, 'holdfast.db')
  // The word may lie in left-over space of a page too, so it is changed wherever it stands.
  const bytes = readFileSync(file, 'latin1').replaceAll('telephone', 'televisor')
  writeFileSync(file, bytes, 'latin1')
  const to = temporaryFolder()
  const attempt = backUp({ folder, to, now: day(1), made: 'daily' })
  await expect(attempt).rejects.toThrow(`Log ${file}: it is damaged`)
  expect(readdirSync(to)).toEqual([])
})

test('a log whose pages are damaged is called damaged, and the disk is not blamed', async () => {
  const { folder, logbook } = await keptLog(200)
  await logbook.close()
  const file = join(folder, 'holdfast.db')
  writeFileSync(file, readFileSync(file).fill(0x5a, 8192, 40_000))
  const to = temporaryFolder()
  const attempt = backUp({ folder, to, now: day(1), made: 'daily' })
  await expect(attempt).rejects.toMatchObject({ issues: [{ code: 'damaged-file', where: `Log ${file}` }] })
  expect(readdirSync(to)).toEqual([])
})

test('an attachment that is damaged is left out and named, and an earlier whole copy is kept on', async () => {
  const { folder } = await keptLog()
  const to = temporaryFolder()
  const [name] = readdirSync(join(folder, 'attachments'))
  await backUp({ folder, to, now: day(1), made: 'daily' })
  writeFileSync(join(folder, 'attachments', name), 'damaged')
  const second = await backUp({ folder, to, now: day(2), made: 'daily' })

  expect(second.manifest.leftOut).toEqual([])
  const elsewhere = await backUp({ folder, to: temporaryFolder(), now: day(2), made: 'daily' })
  expect(elsewhere.manifest.leftOut).toEqual([name])
  expect(await codesOf(elsewhere.folder)).toEqual([])
})

test('backups share an unchanged attachment on a disk that can', async () => {
  const { folder } = await keptLog()
  const to = temporaryFolder()
  const made = [1, 2].map((of) => () => backUp({ folder, to, now: day(of), made: 'daily' }))
  const [first, second] = [await made[0](), await made[1]()]
  const inode = ({ folder, manifest }: Backup): number => statSync(join(folder, manifest.files[1].path)).ino
  expect(inode(second)).toBe(inode(first))
})

test('a folder that takes no backup is refused by name, and the log goes on', async () => {
  const { folder, logbook } = await keptLog()
  const file = join(temporaryFolder(), 'file')
  writeFileSync(file, '')
  await expect(backUp({ folder, to: file, now: day(1), made: 'by hand' })).rejects.toThrow(Refused)
  expect(await logbook.read()).toHaveLength(3)
})

test('thinning out keeps the newest daily backups, those made by hand, and what is being written', async () => {
  const { folder } = await keptLog()
  const to = temporaryFolder()
  await backUp({ folder, to, now: day(1), made: 'by hand' })
  for (const of of [2, 3, 4, 5]) await backUp({ folder, to, now: day(of), made: 'daily' })
  const [written, cutOff] = ['holdfast-2026-02-05T08-00-01', 'holdfast-2026-02-03T08-00-01']
  for (const name of [written, cutOff]) {
    const half = await backUp({ folder, to, now: new Date(`${name.slice(9, 19)}T08:00:01Z`), made: 'daily' })
    rmSync(join(half.folder, manifestName))
    utimesSync(half.folder, day(5), name === written ? day(5) : day(3))
  }
  await thinOut(to, { keep: 2, now: day(5) })
  expect(readdirSync(to).sort()).toEqual([
    'holdfast-2026-02-01T08-00-00',
    'holdfast-2026-02-04T08-00-00',
    'holdfast-2026-02-05T08-00-00',
    written,
  ])
})
