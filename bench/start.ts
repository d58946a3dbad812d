/** How soon the first view stands after `npm start` (installed and built), and what the program takes. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { createInterface } from 'node:readline'
import { gzipSync } from 'node:zlib'
import { type Browser, chromium } from 'playwright-core'
import { browserFlags, findBrowser } from '../scripts/find-browser.mjs'
import { table } from './table.ts'

/** Where the running program was built to; this part of it may lie in a chunk below. */
const dist = dirname(process.argv[1])
const root = dirname(dist)
const megabyte = 1e6

/**
 * Starts on an empty folder, then again on what that left, and prints the time to first paint, the
 * memory after some minutes, and sizes.
 *
 * @param minutes  how long the warm server idles before its memory is read
 */
export async function startBench(minutes: number): Promise<void> {
  const executablePath = findBrowser()
  const data = mkdtempSync(join(tmpdir(), 'holdfast-bench-'))
  // The browser is there before, as a keeper's is.
  const browser = executablePath && (await chromium.launch({ executablePath, args: browserFlags() }))
  try {
    const rows = [['from npm start to', 'address, s', 'first paint, s', 'goal, s']]
    const first = await started(data)
    rows.push(['first start, empty folder', first.seconds, await paint(browser, first), '3.0'])
    await ended(first.server)
    const warm = await started(data)
    rows.push(['again, folder filled', warm.seconds, await paint(browser, warm), '1.5'])
    console.log(table(rows))
    await new Promise((resolve) => setTimeout(resolve, minutes * 60_000))
    console.log(`\nresident after ${minutes} min: ${resident(warm.server.pid)} (goal: under 250 MB)`)
    await ended(warm.server)
    console.log(sizes())
  } finally {
    if (browser) await browser.close()
    rmSync(data, { recursive: true, force: true })
  }
}

interface Started {
  readonly server: ChildProcess
  readonly began: number
  readonly address: string
  readonly seconds: string
}

const since = (began: number): string => ((performance.now() - began) / 1000).toFixed(2)

async function started(data: string): Promise<Started> {
  const began = performance.now()
  const server = spawn('npm', ['start', '--silent', '--', '--data', data], {
    cwd: root,
    env: { ...process.env, HOLDFAST_NO_BROWSER: '1', PORT: '0' },
    stdio: ['ignore', 'pipe', 'inherit'],
    // A group of its own: npm does not hand a signal on to what it started.
    detached: true,
  })
  for await (const line of createInterface(server.stdout))
    if (line.startsWith('http')) return { server, began, address: line, seconds: since(began) }
  throw new Error('The server ended without an address.')
}

/** Until the browser has painted content, as it tells itself. */
async function paint(browser: Browser | undefined | '', { began, address }: Started): Promise<string> {
  if (!browser) return 'no browser'
  const page = await browser.newPage()
  await page.goto(address)
  await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0)
  const paintedAt = await page.evaluate(
    () => performance.timeOrigin + performance.getEntriesByName('first-contentful-paint')[0].startTime,
  )
  await page.close()
  return ((paintedAt - performance.timeOrigin - began) / 1000).toFixed(2)
}

/** Stops npm and the server below it, as Ctrl-C does, and waits until their output is closed. */
async function ended(server: ChildProcess): Promise<void> {
  if (server.pid === undefined) return
  const close = once(server, 'close')
  process.kill(-server.pid, 'SIGINT')
  await close
}

/** Memory of the largest process below npm, where /proc tells it. */
function resident(pid: number | undefined): string {
  const below = [pid]
  try {
    for (const parent of below)
      for (const thread of readdirSync(`/proc/${parent}/task`))
        below.push(
          ...readFileSync(`/proc/${parent}/task/${thread}/children`, 'utf8')
            .split(' ')
            .filter(Boolean)
            .map(Number),
        )
    const sizes = below.map((id) =>
      Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? 0),
    )
    return `${(Math.max(...sizes) / 1000).toFixed(0)} MB`
  } catch {
    return 'not told on this platform'
  }
}

function sizes(): string {
  const files = readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.endsWith('.map'))
    .map((entry) => join(entry.parentPath, entry.name))
  const sum = (paths: readonly string[]): string =>
    (paths.reduce((all, path) => all + statSync(path).size, 0) / megabyte).toFixed(1)
  const web = files.filter((path) => path.startsWith(join(dist, 'web')))
  const scripts = web.filter((path) => /\.(js|css|html)$/.test(path))
  const squeezed = scripts.reduce((all, path) => all + gzipSync(readFileSync(path)).length, 0)
  return `built: ${sum(files)} MB, the web app ${sum(web)} MB (its scripts ${(squeezed / 1000).toFixed(0)} kB gzipped)`
}
