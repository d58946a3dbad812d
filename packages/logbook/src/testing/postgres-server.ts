import { type ChildProcess, execFile, spawn } from 'node:child_process'
import { randomUUID } from 'node:crypto'
import { once } from 'node:events'
import { chown, mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { promisify } from 'node:util'
import pg from 'pg'

/** A database server of a test's own, in a folder of the system's temporary one. */
export interface PostgresServer {
  /** The process that starts the others of the server. */
  readonly pid: number | undefined
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
  // A test that ends badly leaves no server behind.
  const end = (): boolean => server.kill('SIGQUIT')
  process.once('exit', end)
  const address = (database: string): string => `postgres://keeper@127.0.0.1:${port}/${database}`
  return {
    get pid() {
      return server.pid
    },
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
      // Halted, it starts no more processes while they are counted.
      server.kill('SIGSTOP')
      const children = await childrenOf(server)
      server.kill('SIGKILL')
      for (const child of children) killIfThere(child)
      await ended
      while ((await Promise.all(children.map(isRunning))).includes(true)) await pause(5)
    },
    async start() {
      server = await running(binaries, folder, port)
    },
    async remove() {
      process.off('exit', end)
      if (server.exitCode === null && server.signalCode === null) {
        const ended = once(server, 'exit')
        end()
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
      .map(async (name) => ({ child: Number(name), parent: Number((await statusOf(name))[1]) })),
  )
  return parents.filter(({ parent }) => parent === pid).map(({ child }) => child)
}

/** State and parent of a process, by Linux; empty where there is none. */
async function statusOf(pid: number | string): Promise<readonly string[]> {
  const stat = await readFile(`/proc/${pid}/stat`, 'utf8').catch(() => '')
  // The name of the program, which stands in brackets before, may hold blanks.
  return stat === '' ? [] : stat.slice(stat.lastIndexOf(')') + 2).split(' ')
}

/** Whether a process still holds what it held; a dead one that nobody has asked after does not. */
async function isRunning(pid: number): Promise<boolean> {
  const [state] = await statusOf(pid)
  return state !== undefined && state !== 'Z' && state !== 'X'
}

function killIfThere(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL')
  } catch {
    // It ended by itself when the server did.
  }
}
