import { spawnSync } from 'node:child_process'
import { chmod, chown, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Check } from '../check.ts'
import type { Engine } from './engines.ts'
import { Writer } from './run-writer.ts'

/** A disk of its own for one process, which is gone when the process ends. */
export const ownDisk = (folder: string, size: string): readonly string[] => {
  const unshare = process.getuid?.() === 0 ? ['--mount'] : ['--user', '--map-root-user', '--mount']
  const mount = `mount -t tmpfs -o size=${size} none '${folder}' && exec "$@"`
  return ['unshare', ...unshare, 'sh', '-c', mount, 'sh']
}

/** Fills the disk in the middle of the writes, and frees it again: said clearly, nothing lost. */
export async function fullDisk(engine: Engine): Promise<Check> {
  const name = 'a full disk, SQLite'
  const { folder } = await engine.place()
  const before = ownDisk(folder, '3m')
  const [command = '', ...rest] = before
  if (spawnSync(command, [...rest, 'true']).status !== 0)
    return { name, outcome: 'skipped', says: 'this machine gives a process no disk of its own' }
  const count = 40
  const task = { folder, first: 1, count, fillDisk: join(folder, 'full') }
  const writer = new Writer(task, before)
  await writer.ended
  const [start, end] = writer.held
  const numbers = end?.entries.map(([number]) => number) ?? []
  const isWhole = start !== undefined && new Set(numbers).size === count && numbers.length === count
  const isAcknowledged = writer.stored.length === count
  const codes = writer.refused.map(({ code }) => code)
  const isSaid = codes.length > 0 && codes.every((code) => code === 'log-not-written')
  return {
    name,
    outcome: isWhole && isAcknowledged && isSaid ? 'passed' : 'failed',
    says: `${codes.length} refused (${writer.refused[0]?.got ?? 'none'}), then ${writer.stored.length} of ${count} acknowledged and ${numbers.length} there`,
  }
}

/** A folder that cannot be written to: refused by name, the log untouched. */
export async function readOnlyFolder(engine: Engine): Promise<Check> {
  const name = 'a read-only folder'
  const { folder } = await engine.place()
  const first = new Writer({ folder, first: 1, count: 3 })
  await first.ended
  const file = join(folder, 'holdfast.db')
  const before = await readFile(file)
  // The administrator may write anywhere.
  const nobody = { uid: 65534, gid: 65534 }
  const isAdministrator = process.getuid?.() === 0
  if (isAdministrator) await chown(folder, nobody.uid, nobody.gid)
  await chmod(folder, 0o555)
  const writer = new Writer({ folder, first: 4, count: 1 }, [], isAdministrator ? nobody : {})
  await writer.ended
  await chmod(folder, 0o755)
  if (!writer.hasSaid('opening'))
    return { name, outcome: 'skipped', says: 'another user may not start this program here' }
  const isUntouched = before.equals(await readFile(file))
  const [issue] = writer.refused
  return {
    name,
    outcome: issue?.code === 'data-folder-not-writable' && isUntouched ? 'passed' : 'failed',
    says: `${issue?.got ?? 'opened'}; the log is ${isUntouched ? 'untouched' : 'changed'}`,
  }
}
