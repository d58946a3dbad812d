/** The ensemble in workers of a page, under its content policy: the same figures as in Node. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { dirname, extname, join } from 'node:path'
import { pageHeaders } from '@holdfast/page-headers'
import { chromium } from 'playwright-core'
import { browserFlags, findBrowser } from '../../scripts/find-browser.mjs'
import { table } from '../table.ts'
import type { Timed } from './page.ts'

const root = dirname(dirname(process.argv[1]))
const types: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript' }

/** @param members  500 are asked for; fewer where time is short */
export async function browserBench(members: number): Promise<void> {
  const executablePath = findBrowser()
  if (executablePath === undefined) {
    console.log('No Chrome, Edge or Chromium found: set HOLDFAST_BROWSER to the path of one.')
    return
  }
  const folder = mkdtempSync(join(tmpdir(), 'holdfast-bench-page-'))
  const server = createServer((request, response) => {
    const path = request.url === '/' ? '/index.html' : (request.url ?? '')
    for (const [name, value] of Object.entries(pageHeaders)) response.setHeader(name, value)
    const type = types[extname(path)]
    response.statusCode = type ? 200 : 404
    if (type) response.setHeader('content-type', type)
    response.end(type ? readFileSync(join(folder, path)) : '')
  })
  try {
    build(folder)
    await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
    const browser = await chromium.launch({ executablePath, args: browserFlags() })
    const page = await browser.newPage()
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`)
    const ms = (count: number, workers: number, times: number): Promise<number> =>
      page.evaluate(
        ([count, workers, times]) => (window as unknown as { timed: Timed }).timed(count, 90, workers, times),
        [count, workers, times] as const,
      )
    const rows = [
      [`${browser.browserType().name()} ${browser.version()}`, 'measured', 'to reach'],
      [`${members} members x 90 days in one worker, s`, ((await ms(members, 1, 1)) / 1000).toFixed(2), '2.5'],
      ['in two, s', ((await ms(members, 2, 1)) / 1000).toFixed(2), '1.3'],
      ['a lever: 16 members in one worker, ms', (await ms(16, 1, 5)).toFixed(0), '50'],
      ['a lever: 16 members in two, ms', (await ms(16, 2, 5)).toFixed(0), '50'],
      ['a lever: 64 members in two, ms', (await ms(64, 2, 5)).toFixed(0), '200'],
    ]
    await browser.close()
    console.log(table(rows))
  } finally {
    server.closeAllConnections()
    server.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** From the sources, as the app that ships is built. */
function build(folder: string): void {
  const config = join(root, 'bench', 'browser', 'vite.config.ts')
  const { status, stderr } = spawnSync(
    process.execPath,
    [
      join(root, 'node_modules', 'vite', 'bin', 'vite.js'),
      'build',
      '--config',
      config,
      '--outDir',
      folder,
      '--logLevel',
      'error',
    ],
    { cwd: root, encoding: 'utf8' },
  )
  if (status !== 0) throw new Error(`The page of the bench could not be built: ${stderr}`)
}
