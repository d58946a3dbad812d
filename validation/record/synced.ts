import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { PostgresServer } from '@holdfast/logbook/testing/postgres-server.ts'
import type { Check } from '../check.ts'
import type { Engine } from './engines.ts'
import { Writer } from './run-writer.ts'
import { type Acknowledged, ofPostgres, ofSqlite } from './traces.ts'

const entries = 30
const calls = 'trace=fsync,fdatasync,write,pwrite64,sendto,recvfrom,rename,renameat,renameat2'
const strace = ['strace', '-f', '-y', '-s', '300', '-e', calls]
const hasStrace = spawnSync('strace', ['-V']).status === 0

/** Reads the program's calls of the system: what it acknowledges it has made the disk write before. */
export async function syncedBefore(engine: Engine): Promise<Check> {
  return traced('SQLite', async (file) => {
    const place = await engine.place()
    const writer = new Writer({ ...place, first: 1, count: entries }, [...strace, '-o', file])
    await writer.ended
    return ofSqlite(await readFile(file, 'utf8'))
  })
}

/** The same of the server: its answer to a commit comes after the writing. */
export async function syncedByServer(engine: Engine & { readonly server: PostgresServer }): Promise<Check> {
  return traced('PostgreSQL', async (file) => {
    const place = await engine.place()
    const tracer = spawn('strace', [...strace.slice(1), '-o', file, '-p', String(engine.server.pid)])
    const ended = once(tracer, 'exit')
    // It says that it is attached, or why not.
    await Promise.race([once(tracer.stderr, 'data'), ended])
    const writer = new Writer({ ...place, first: 1, count: entries })
    await writer.ended
    tracer.kill('SIGINT')
    await ended
    return ofPostgres(await readFile(file, 'utf8'))
  })
}

async function traced(engine: string, trace: (file: string) => Promise<Acknowledged>): Promise<Check> {
  const name = `on the disk before it is acknowledged, ${engine}`
  if (!hasStrace) return { name, outcome: 'skipped', says: 'there is no strace here' }
  const folder = await mkdtemp(join(tmpdir(), 'trace-'))
  try {
    const { after, before } = await trace(join(folder, 'calls'))
    if (after + before === 0) return { name, outcome: 'skipped', says: 'strace may not look here' }
    return {
      name,
      outcome: before === 0 && after >= entries ? 'passed' : 'failed',
      says: `${after} acknowledgements after the disk had written, ${before} before`,
    }
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
