import { type ChildProcess, spawn } from 'node:child_process'
import { dirname, join } from 'node:path'
import { Writer } from '../record/run-writer.ts'

/** The command line, built beside this program: what a keeper types is what is checked. */
const program = join(dirname(process.argv[1] ?? ''), 'holdfast.mjs')

/** A command at work. */
export interface Running {
  readonly child: ChildProcess
  /** Exit code, undefined where it was killed, and what it said on either output. */
  readonly ended: Promise<{ readonly code: number | undefined; readonly said: string }>
}

/** Starts a command on a data folder. @param before  a command that starts it, such as one with a disk of its own */
export function holdfast(data: string, args: readonly string[], before: readonly string[] = []): Running {
  const [command = process.execPath, ...rest] = [
    ...before,
    process.execPath,
    program,
    ...args,
    '--data',
    data,
  ]
  const { DATABASE_URL: _, HOLDFAST_BACKUPS: __, ...env } = process.env
  const child = spawn(command, rest, { env, stdio: ['ignore', 'pipe', 'pipe'] })
  let said = ''
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => (said += part))
  const ended = new Promise<{ code: number | undefined; said: string }>((resolve) =>
    child.on('close', (code) => resolve({ code: code ?? undefined, said })),
  )
  return { child, ended }
}

/** Stores numbered readings, and with every tenth a picture, in a process of its own. */
export async function stored(folder: string, first: number, count: number): Promise<void> {
  await new Writer({ folder, first, count }).ended
}

/** How many entries a log says it holds; undefined where it does not open. */
export async function entriesIn(folder: string): Promise<number | undefined> {
  const reader = new Writer({ folder, first: 1, count: 0 })
  await reader.ended
  return reader.held[0]?.entries.length
}

/** A folder with a log of its own for a check, and a backup of its first part. */
export async function logWithBackup(
  place: () => Promise<{ readonly folder: string }>,
): Promise<{ readonly data: string; readonly to: string; readonly backup: string }> {
  const { folder } = await place()
  const [data, to] = [join(folder, 'data'), join(folder, 'backups')]
  await stored(data, 1, fewer)
  const { said } = await holdfast(data, ['backup', '--to', to, '--json']).ended
  const { backup }: { readonly backup: string } = JSON.parse(said)
  await stored(data, fewer + 1, more - fewer)
  return { data, to, backup }
}

/** Entries in the backup, and in the log. */
export const [fewer, more] = [200, 300]
