import { readdir } from 'node:fs/promises'
import { backupsIn, checkBackup } from '@holdfast/logbook/copies'
import type { Check } from '../check.ts'
import type { Engine } from '../record/engines.ts'
import { entriesIn, fewer, holdfast, logWithBackup, more, type Running } from './program.ts'

/** Waits until a command writes its first file, most of its time being that of its start. @returns whether it did */
async function begun({ ended }: Running, names: () => Promise<readonly string[]>): Promise<boolean> {
  const before = (await names()).length
  let isOver = false
  ended.then(() => {
    isOver = true
  })
  while (!isOver) {
    if ((await names()).length > before) return true
    await new Promise((resolve) => setTimeout(resolve, 1))
  }
  return false
}

/** How long a command takes from its first file to its end, ms. */
async function workOf(running: Running, names: () => Promise<readonly string[]>): Promise<number> {
  await begun(running, names)
  const start = performance.now()
  await running.ended
  return performance.now() - start
}

/** Kills a command at a random moment of its work. @returns whether it was still at it */
async function killedAtWork(
  running: Running,
  names: () => Promise<readonly string[]>,
  longest: number,
): Promise<boolean> {
  await begun(running, names)
  const timer = setTimeout(() => running.child.kill('SIGKILL'), Math.random() * longest)
  const { code } = await running.ended
  clearTimeout(timer)
  return code === undefined
}

/** Backups killed at random moments: each that counts is whole, and the log is as it was. */
export async function killedBackups({ place }: Engine, times: number): Promise<Check> {
  const { data, to } = await logWithBackup(place)
  const backup = (): Running => holdfast(data, ['backup', '--to', to])
  const names = (): Promise<readonly string[]> => readdir(to)
  const longest = await workOf(backup(), names)
  let killed = 0
  for (let time = 0; time < times; time++) if (await killedAtWork(backup(), names, longest)) killed++
  const counted = await backupsIn(to)
  const checked = await Promise.all(counted.map(({ folder }) => checkBackup(folder)))
  const whole = checked.filter(({ ok }) => ok).length
  const cutOff = (await readdir(to)).length - counted.length
  const held = await entriesIn(data)
  return {
    name: 'backups killed at random',
    outcome: whole === counted.length && held === more && killed > 0 ? 'passed' : 'failed',
    says: `${killed} of ${times} killed; ${whole} of ${counted.length} that count are whole, ${cutOff} cut off count for nothing; the log holds ${held} of ${more}`,
  }
}

/** Restores killed at random moments: the log is the old one or the new one, and the old one is there. */
export async function killedRestores({ place }: Engine, times: number): Promise<Check> {
  const { data, backup } = await logWithBackup(place)
  const restore = (): Running => holdfast(data, ['restore', backup, '--json'])
  const names = (): Promise<readonly string[]> => readdir(data)
  const whole = restore()
  const longest = await workOf(whole, names)
  const { kept }: { readonly kept: string } = JSON.parse((await whole.ended).said)
  /** Puts the first log back, so that the next restore has something to replace. */
  const undone = async (): Promise<boolean> => {
    const { said } = await holdfast(data, ['restore', kept]).ended
    const isBack = (await entriesIn(data)) === more
    if (!isBack) failures.push(said)
    return isBack
  }
  const failures: string[] = []
  await undone()
  let killed = 0
  const found = { old: 0, restored: 0, other: 0 }
  for (let time = 0; time < times; time++) {
    if (await killedAtWork(restore(), names, longest)) killed++
    const held = await entriesIn(data)
    found[held === more ? 'old' : held === fewer ? 'restored' : 'other']++
    if (held === fewer && !(await undone())) found.other++
  }
  return {
    name: 'restores killed at random',
    outcome: found.other === 0 && killed > 0 ? 'passed' : 'failed',
    says: `${killed} of ${times} killed; then ${found.old} had the old log, ${found.restored} the backup with the old one kept, ${found.other} neither${failures.map((said) => `; ${said}`).join('')}`,
  }
}
