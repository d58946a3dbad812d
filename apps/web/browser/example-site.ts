import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { pageHeaders } from '@holdfast/page-headers'
import { build } from 'vite'
import { exampleData, exampleEntries } from '../src/fixtures/example-system.ts'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
}

/** Builds the pages into a folder that is gone afterwards. */
export async function buildSite(mode: 'example' | 'production') {
  const folder = await mkdtemp(join(tmpdir(), 'holdfast-site-'))
  await buildPages(mode, folder)
  return { folder, remove: () => rm(folder, { recursive: true }) }
}

/** Builds the pages, as a test or as what ships. */
export async function buildPages(mode: 'example' | 'production', folder: string): Promise<void> {
  await build({
    configFile: fileURLToPath(new URL('../vite.config.ts', import.meta.url)),
    mode,
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true },
  })
}

/** Serves built pages and the invented system, as the server will. */
export async function serveSite(folder: string) {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost')
    for (const [name, value] of Object.entries(pageHeaders)) response.setHeader(name, value)
    const { system } = exampleData
    if (pathname === '/api/systems') return void json([{ id: system.id, name: system.name }])
    const shown = [`/api/systems/${system.id}`, `/api/systems/${system.id}/description`]
    if (shown.includes(pathname)) return void json(exampleData)
    if (pathname === `/api/systems/${system.id}/entries`) return void json({ lines: [] })
    const entry = exampleEntries.find(({ id }) => pathname === `/api/entries/${id}`)
    if (entry) return void json({ entry: { id: entry.id, at: entry.at }, says: entry.text })
    const path = pathname === '/' ? '/index.html' : pathname
    try {
      const file = await readFile(join(folder, path))
      response.setHeader('content-type', types[extname(path)] ?? 'application/octet-stream')
      response.end(file)
    } catch {
      response.statusCode = 404
      response.end()
    }
    function json(value: unknown) {
      response.setHeader('content-type', 'application/json')
      response.end(JSON.stringify(value))
    }
  })
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
  const { port } = server.address() as AddressInfo
  return { address: `http://127.0.0.1:${port}/`, close: () => new Promise((closed) => server.close(closed)) }
}
