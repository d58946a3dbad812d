import { type ChildProcess, execFile, spawn } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { once } from 'node:events'
import { chown, mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import pg from 'pg'

/** A database server of a test's own, in a folder of the system's temporary one. */
export interface PostgresServer {
  /** Makes an empty database and gives its address. */
  newDatabase(): Promise<string>
  /** Ends every process of the server at once, as a power cut would. */
  kill(): Promise<void>
  /** Starts it again on what the disk holds. */
  start(): Promise<void>
  /** Ends it and removes its folder. */
  remove(): Promise<void>
}

/** The server refuses to run as the administrator; there it runs as this user, which owns nothing. */
const nobody = { uid: 65534, gid: 65534 }
const as = process.getuid?.() === 0 ? nobody : {}

/** Starts a server of its own. @param binaries  the folder that `postgresBinaries` found */
export async function postgresServer(binaries: string): Promise<PostgresServer> {
  const folder = await mkdtemp(join(tmpdir(), 'postgres-'))
  if ('uid' in as) await chown(folder, nobody.uid, nobody.gid)
  const data = join(folder, 'data')
  const make = ['--pgdata', data, '--username=keeper', '--auth=trust', '--encoding=UTF8', '--locale=C']
  await promisify(execFile)(join(binaries, 'initdb'), [...make, '--no-sync'], { ...as, cwd: folder })
  const port = await freePort()
  let server = await running(binaries, folder, port)
  const address = (database: string): string => `postgres://keeper@127.0.0.1:${port}/${database}`
  return {
    async newDatabase() {
      const name = `log_${randomUUID().replaceAll('-', '')}`
      const client = new pg.Client(address('postgres'))
      await client.connect()
      await client.query(`CREATE DATABASE ${name}`)
      await client.end()
      return address(name)
    },
    async kill() {
      const ended = once(server, 'exit')
      const children = await childrenOf(server)
      server.kill('SIGKILL')
      for (const child of children) killIfThere(child)
      await ended
    },
    async start() {
      server = await running(binaries, folder, port)
    },
    async remove() {
      if (server.exitCode === null && server.signalCode === null) {
        const ended = once(server, 'exit')
        server.kill('SIGQUIT')
        await ended
      }
      await rm(folder, { recursive: true })
    },
  }
}

/** Starts the server on a folder and waits until it answers. */
async function running(binaries: string, folder: string, port: number): Promise<ChildProcess> {
  const settings = { listen_addresses: '127.0.0.1', unix_socket_directories: folder, lc_messages: 'C' }
  const named = Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`])
  const options = ['-D', join(folder, 'data'), '-p', String(port), ...named]
  const stdio = ['ignore', 'ignore', 'pipe'] as const
  const child = spawn(join(binaries, 'postgres'), options, { ...as, cwd: folder, stdio: [...stdio] })
  process.once('exit', () => child.kill('SIGQUIT'))
  let said = ''
  await new Promise<void>((resolve, reject) => {
    child.stderr?.on('data', (part) => {
      said += String(part)
      if (said.includes('database system is ready to accept connections')) resolve()
    })
    child.once('exit', () => reject(new Error(`PostgreSQL did not start: ${said}`)))
  })
  return child
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const address = server.address()
  server.close()
  await once(server, 'close')
  if (address === null || typeof address === 'string') throw new Error('no port is free')
  return address.port
}

/** The processes a process started, by Linux's list of them; elsewhere none. */
async function childrenOf({ pid }: ChildProcess): Promise<readonly number[]> {
  const names = await readdir('/proc').catch(() => [])
  const parents = await Promise.all(
    names
      .filter((name) => /^\d+$/.test(name))
      .map(async (name) => {
        const stat = await readFile(`/proc/${name}/stat`, 'utf8').catch(() => '')
        // The name of the program, which stands in brackets before, may hold blanks.
        const parent = Number(stat.slice(stat.lastIndexOf(')') + 2).split(' ')[1])
        return { child: Number(name), parent }
      }),
  )
  return parents.filter(({ parent }) => parent === pid).map(({ child }) => child)
}

function killIfThere(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL')
  } catch {
    // It ended by itself when the server did.
  }
}
