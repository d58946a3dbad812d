import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Logbook } from '@holdfast/logbook'
import { openLogbook } from '@holdfast/logbook/sqlite'
import { temporaryFolder } from '@holdfast/testing'
import { expect, onTestFinished, test } from 'vitest'
import { backUpWhenDue, type ScheduleOptions, scheduleBackups } from './backup-schedule.ts'
import { backupSettings } from './backup-settings.ts'

/** An open log, and a schedule for it at a time that the test sets. */
function kept(): { readonly logbook: Logbook; readonly at: (time: string) => ScheduleOptions } {
  const folder = temporaryFolder()
  const log = openLogbook({ folder })
  if (!log.ok) throw new Error('not opened')
  const { logbook } = log
  onTestFinished(() => logbook.close())
  const at = (time: string): ScheduleOptions => ({
    logbook,
    folder,
    to: join(folder, 'backups'),
    keep: 2,
    complain: (line) => {
      throw new Error(line)
    },
    clock: () => new Date(time),
  })
  return { logbook, at }
}

const note = (number: number) => ({
  id: `018f3a1e-7c00-7000-8000-${String(number).padStart(12, '0')}`,
  workspace: 'home',
  system: 'reef',
  kind: 'note',
  v: 1,
  at: '2026-01-04',
  precision: 'day' as const,
  madeAt: '2026-01-04T19:12:08.201Z',
  by: 'keeper',
  device: 'telephone',
  body: { text: 'calm' },
})

test('an empty log needs no backup; the first entry is backed up at the next look', async () => {
  const { logbook, at } = kept()
  expect(await backUpWhenDue(at('2026-02-01T08:00:00Z'))).toBeUndefined()
  await logbook.append([note(1)])
  expect((await backUpWhenDue(at('2026-02-01T09:00:00Z')))?.manifest).toMatchObject({
    made: 'daily',
    entries: 1,
  })
})

test('the next one comes a day later, and only when something came since', async () => {
  const { logbook, at } = kept()
  await logbook.append([note(1)])
  await backUpWhenDue(at('2026-02-01T09:00:00Z'))
  expect(await backUpWhenDue(at('2026-02-03T09:00:00Z'))).toBeUndefined()
  await logbook.append([note(2)])
  expect(await backUpWhenDue(at('2026-02-02T08:59:59Z'))).toBeUndefined()
  expect((await backUpWhenDue(at('2026-02-02T09:00:00Z')))?.manifest.entries).toBe(2)
  await logbook.attach(new Uint8Array(9), 'image/png')
  expect((await backUpWhenDue(at('2026-02-03T09:00:00Z')))?.manifest.files).toHaveLength(2)
})

test('a clock that was set back by a month does not end the backups', async () => {
  const { logbook, at } = kept()
  await logbook.append([note(1)])
  await backUpWhenDue(at('2026-03-01T09:00:00Z'))
  await logbook.append([note(2)])
  expect(await backUpWhenDue(at('2026-02-01T09:00:00Z'))).toBeDefined()
})

test('as many daily backups stay as were asked for', async () => {
  const { logbook, at } = kept()
  for (const day of [1, 2, 3, 4]) {
    await logbook.append([note(day)])
    await backUpWhenDue(at(`2026-02-0${day}T09:00:00Z`))
  }
  const { to } = at('2026-02-04T09:00:00Z')
  expect(readdirSync(to).sort()).toEqual(['holdfast-2026-02-03T09-00-00', 'holdfast-2026-02-04T09-00-00'])
})

test('the schedule makes its first backup by itself, and its end waits for it', async () => {
  const { logbook, at } = kept()
  await logbook.append([note(1)])
  const options = { ...at('2026-02-01T09:00:00Z'), soon: 0 }
  const end = scheduleBackups(options)
  await expect.poll(() => readdirSync(options.folder)).toContain('backups')
  await end()
  expect(readdirSync(join(options.to, 'holdfast-2026-02-01T09-00-00'))).toContain('manifest.json')
})

test('a backup that fails is said, and the schedule goes on', async () => {
  const { logbook, at } = kept()
  await logbook.append([note(1)])
  const said: string[] = []
  const nowhere = {
    to: join('/', 'dev', 'null', 'backups'),
    complain: (line: string) => void said.push(line),
  }
  const end = scheduleBackups({ ...at('2026-02-01T09:00:00Z'), ...nowhere, soon: 0 })
  await expect.poll(() => said).toEqual([expect.stringContaining('could not be written')])
  await end()
})

test('where backups go and how many stay is for the keeper to set', () => {
  expect(backupSettings('data', {})).toEqual({ to: join('data', 'backups'), keep: 14 })
  const set = { HOLDFAST_BACKUPS: 'disk', HOLDFAST_BACKUPS_KEEP: '0' }
  expect(backupSettings('data', set)).toEqual({ to: 'disk', keep: 0 })
  expect(backupSettings('data', { HOLDFAST_BACKUPS_KEEP: 'two' })).toBe(
    'HOLDFAST_BACKUPS_KEEP: "two" is no count of days. Give a whole number, such as 14, or 0 for no daily backups.',
  )
})
