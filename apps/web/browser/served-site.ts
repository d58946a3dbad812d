import type { Browser } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import { buildSite, serveSite } from './example-site.ts'
import { startBrowser } from './visitor.ts'

/** Pages built and served, and a browser before them, for all tests of a file; gone after the last. */
export interface ServedSite {
  readonly folder: string
  readonly address: string
  readonly browser: Browser
}

/** Opens before the first test of the file that calls it; what it gives is read inside tests. */
export function servedSite(mode: 'example' | 'production'): ServedSite {
  let site: Awaited<ReturnType<typeof buildSite>>
  let server: Awaited<ReturnType<typeof serveSite>>
  let browser: Browser
  beforeAll(async () => {
    site = await buildSite(mode)
    server = await serveSite(site.folder)
    browser = await startBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    await server?.close()
    await site?.remove()
  })
  return {
    get folder() {
      return site.folder
    },
    get address() {
      return server.address
    },
    get browser() {
      return browser
    },
  }
}
