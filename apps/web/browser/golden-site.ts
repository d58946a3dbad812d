import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { text } from 'node:stream/consumers'
import { fileURLToPath } from 'node:url'
import { pageHeaders } from '@holdfast/page-headers'
import { build } from 'vite'
import { plugins } from '../../../vite.shared.ts'

export interface GoldenSite {
  /** The year of these members in some browser, each share in a worker of its own. */
  years(open: (address: string) => Promise<unknown>, shares: readonly (readonly number[])[]): Promise<unknown>
  close(): Promise<unknown>
}

/** Serves the page of the golden year under our content policy, to any browser, and takes what it sends home. */
export async function serveGolden(): Promise<GoldenSite> {
  const scripts = new Map<string, string>(
    await Promise.all(
      ['page', 'worker'].map(async (name) => [`/${name}.js`, await scriptOf(`./golden.${name}.ts`)] as const),
    ),
  )
  let heard: (years: unknown) => void = () => undefined
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost')
    for (const [name, value] of Object.entries(pageHeaders)) response.setHeader(name, value)
    if (pathname === '/years') {
      heard(JSON.parse(await text(request)))
      return void response.end()
    }
    const script = scripts.get(pathname)
    response.setHeader('content-type', script === undefined ? 'text/html' : 'text/javascript')
    response.end(
      script ?? '<!doctype html><title>Golden</title><script type="module" src="/page.js"></script>',
    )
  })
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
  const { port } = server.address() as AddressInfo
  return {
    async years(open, shares) {
      const came = new Promise<unknown>((resolve) => {
        heard = resolve
      })
      await open(`http://127.0.0.1:${port}/?shares=${encodeURIComponent(JSON.stringify(shares))}`)
      return came
    },
    close: () => {
      server.closeAllConnections()
      return new Promise((closed) => server.close(closed))
    },
  }
}

async function scriptOf(path: string): Promise<string> {
  const entry = fileURLToPath(new URL(path, import.meta.url))
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    plugins: plugins(),
    build: { write: false, lib: { entry, formats: ['es'], fileName: 'golden' }, target: 'es2023' },
  })
  const [{ output }] = Array.isArray(built) ? built : [built as Extract<typeof built, { output: unknown }>]
  return output[0].code
}
