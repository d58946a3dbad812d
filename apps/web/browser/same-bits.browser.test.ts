import { fileURLToPath } from 'node:url'
import { goldenYear } from '@holdfast/ecosystem/testing/golden-year'
import { pageHeaders } from '@holdfast/page-headers'
import type { Browser } from 'playwright-core'
import { build } from 'vite'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { plugins } from '../../../vite.shared.ts'
import { startBrowser } from './visitor.ts'

let browser: Browser
let worker: string

beforeAll(async () => {
  browser = await startBrowser()
  const entry = fileURLToPath(new URL('./golden.worker.ts', import.meta.url))
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    plugins: plugins(),
    build: { write: false, lib: { entry, formats: ['es'], fileName: 'golden' }, target: 'es2023' },
  })
  const [{ output }] = Array.isArray(built) ? built : [built as Extract<typeof built, { output: unknown }>]
  worker = output[0].code
})

afterAll(async () => {
  await browser?.close()
})

/** A year of these members in workers of a page under our content policy, each worker a share of them. */
async function inWorkers(shares: readonly (readonly number[])[]): Promise<readonly number[]> {
  const page = await browser.newPage()
  const headers = { ...pageHeaders, 'content-type': 'text/html' }
  await page
    .context()
    .route('http://golden.test/**', (route) =>
      route.fulfill(
        route.request().url().endsWith('.js')
          ? { body: worker, headers: { ...headers, 'content-type': 'text/javascript' } }
          : { body: '<!doctype html><title>Golden</title>', headers },
      ),
    )
  await page.goto('http://golden.test/')
  const years = await page.evaluate(
    (lists) =>
      Promise.all(
        lists.map(
          (members) =>
            new Promise<readonly number[]>((resolve, reject) => {
              const one = new Worker('/golden.js', { type: 'module' })
              one.addEventListener('message', ({ data }) => resolve(data))
              one.addEventListener('error', ({ message }) => reject(new Error(message)))
              one.postMessage(members)
            }),
        ),
      ),
    shares,
  )
  await page.context().close()
  return years.flat()
}

const members = Array.from({ length: 16 }, (_, member) => member)

it('a year has the same bits here and in the browser, in one worker and in two', async () => {
  const here = goldenYear(members)
  expect(await inWorkers([members])).toEqual(here)
  expect(await inWorkers([members.slice(0, 7), members.slice(7)])).toEqual(here)
}, 120_000)
