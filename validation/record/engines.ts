import { chmod, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { postgresBinaries } from '@holdfast/logbook/testing/postgres-binaries.ts'
import { type PostgresServer, postgresServer } from '@holdfast/logbook/testing/postgres-server.ts'
import type { Writer } from './run-writer.ts'
import type { Place } from './task.ts'

/** One of the two ways to keep a log, with stores of its own. */
export interface Engine {
  readonly name: string
  /** Gives an empty place. */
  place(): Promise<Place>
  /** Ends the writer, and the server where there is one, by kill -9. */
  cutPower(writer: Writer): Promise<void>
  /** Starts again what `cutPower` ended. */
  powerOn(): Promise<void>
  remove(): Promise<void>
}

/** A folder of the system's temporary one, in which engines keep their places. */
async function folderOfOwn(): Promise<{ folder: string; place(): Promise<Place> }> {
  const folder = await mkdtemp(join(tmpdir(), 'record-'))
  // A check that runs the writer as another user must let it in.
  await chmod(folder, 0o755)
  return { folder, place: async () => ({ folder: await mkdtemp(join(folder, 'log-')) }) }
}

async function kill(writer: Writer): Promise<void> {
  writer.child.kill('SIGKILL')
  await writer.ended
}

/** The log in one file of the keeper's folder. */
export async function sqlite(): Promise<Engine> {
  const { folder, place } = await folderOfOwn()
  return {
    name: 'SQLite',
    place,
    cutPower: kill,
    powerOn: async () => undefined,
    remove: () => rm(folder, { recursive: true, force: true }),
  }
}

/** The log on a server of the check's own; undefined where this machine has no PostgreSQL. */
export async function postgres(): Promise<(Engine & { readonly server: PostgresServer }) | undefined> {
  const binaries = postgresBinaries()
  if (binaries === undefined) return undefined
  const { folder, place } = await folderOfOwn()
  const server = await postgresServer(binaries)
  return {
    name: 'PostgreSQL',
    server,
    place: async () => ({ ...(await place()), databaseUrl: await server.newDatabase() }),
    async cutPower(writer) {
      await server.kill()
      await kill(writer)
    },
    powerOn: () => server.start(),
    async remove() {
      await server.remove()
      await rm(folder, { recursive: true, force: true })
    },
  }
}
