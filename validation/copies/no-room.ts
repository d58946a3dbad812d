import { spawnSync } from 'node:child_process'
import { mkdir, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Check } from '../check.ts'
import type { Engine } from '../record/engines.ts'
import { ownDisk } from '../record/no-room.ts'
import { entriesIn, holdfast, logWithBackup, more } from './program.ts'

/** Says what lies on the small disk before it is gone with its process. */
const listed = (folder: string): readonly string[] => [
  'sh',
  '-c',
  `"$@"; echo "exit $?"; ls -A '${folder}'`,
  'sh',
]

/** A disk too small for the copy: said by each command, and nothing half written is left. */
export async function copiesWithoutRoom({ place }: Engine): Promise<Check> {
  const name = 'a disk without room for a copy'
  const { data, to, backup } = await logWithBackup(place)
  const small = join(to, '..', 'small')
  await mkdir(small)
  const disk = ownDisk(small, '64k')
  const [command = '', ...rest] = disk
  if (spawnSync(command, [...rest, 'true']).status !== 0)
    return { name, outcome: 'skipped', says: 'this machine gives a process no disk of its own' }
  const before = [...disk, ...listed(small)]
  const tried = [
    await holdfast(data, ['backup', '--to', small], before).ended,
    await holdfast(data, ['export', join(small, 'log.json')], before).ended,
    await holdfast(small, ['restore', backup], before).ended,
  ]
  const isSaid = tried.every(({ said }) => /ENOSPC|no space|full/i.test(said) && said.includes('exit 1'))
  const left = tried.map(({ said }) => said.slice(said.indexOf('exit 1') + 6).trim())
  const held = await entriesIn(data)
  const isClean = left.every((names) => names === '') && (await readdir(small)).length === 0
  return {
    name,
    outcome: isSaid && isClean && held === more ? 'passed' : 'failed',
    says: `backup, export and restore ${isSaid ? 'say so' : `say ${tried.map(({ said }) => said).join('; ')}`}, ${isClean ? 'nothing half written is left' : `left: ${left.join(', ')}`}; the log holds ${held} of ${more}`,
  }
}
