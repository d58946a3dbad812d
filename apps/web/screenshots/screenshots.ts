/**
 * Takes pictures of the real program: `npm run screenshots` those of the README into docs/pictures,
 * `npm run screenshots -- FOLDER` every view, to be looked at. It starts the built server on a folder of its own, so no log of a keeper is shown.
 */
import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { type Browser, chromium } from 'playwright-core'
import { browserFlags, findBrowser } from '../../../scripts/find-browser.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const named = process.argv[2]
const folder = named ?? join(here, '..', 'docs', 'pictures')
/** What the README shows. */
const shown = ['ledger-desktop', 'outlook-desktop', 'outlook-phone']
const isWanted = (picture: string): boolean => named !== undefined || shown.includes(picture)
const data = mkdtempSync(join(tmpdir(), 'holdfast-pictures-'))
/** Long enough for the whole ensemble on a slow machine. */
const patience_ms = 180_000

const views = [
  { name: 'desktop', width: 1280, height: 900, scheme: 'light' },
  { name: 'desktop-dark', width: 1280, height: 900, scheme: 'dark' },
  { name: 'phone', width: 390, height: 844, scheme: 'light' },
  { name: 'phone-dark', width: 390, height: 844, scheme: 'dark' },
] as const

async function addressOf(server: ReturnType<typeof spawn>): Promise<string> {
  if (!server.stdout) throw new Error('The server has no output to read its address from.')
  for await (const line of createInterface(server.stdout)) if (line.startsWith('http')) return line
  throw new Error('The server ended without an address.')
}

async function take(browser: Browser, address: string): Promise<void> {
  for (const { name, width, height, scheme } of views) {
    if (!isWanted(`ledger-${name}`) && !isWanted(`outlook-${name}`)) continue
    const page = await browser.newPage({
      viewport: { width, height },
      colorScheme: scheme,
      locale: 'en-GB',
    })
    await page.goto(`${address}/?place=water`)
    await page.locator('.fan').first().waitFor({ timeout: patience_ms })
    await page.locator('.river').first().waitFor({ timeout: patience_ms })
    // Between a rough answer and the question for the whole one nothing is under way for a moment.
    for (let still = 0; still < 3; still++) {
      await page.getByText('being worked out').first().waitFor({ state: 'detached', timeout: patience_ms })
      await page.waitForTimeout(1000)
    }
    // On a telephone the words fill the first screen: the picture is further down.
    const starts = { ledger: '#ledger-title', outlook: width < 600 ? '.fan-view' : '#outlook-title' }
    for (const [part, start] of Object.entries(starts)) {
      if (!isWanted(`${part}-${name}`)) continue
      await page
        .locator(start)
        .first()
        .evaluate((element) => element.scrollIntoView())
      await page.screenshot({ path: join(folder, `${part}-${name}.png`) })
    }
    if (isWanted(`record-${name}`)) {
      await page.goto(`${address}/?place=record`)
      await page.locator('.log-line').first().waitFor()
      await page.screenshot({ path: join(folder, `record-${name}.png`), fullPage: width < 600 })
    }
    await page.close()
    process.stdout.write(`${name}: ledger, outlook and record\n`)
  }
}

const executablePath = findBrowser()
if (!executablePath) throw new Error('No browser of the Chromium family is on this machine.')
mkdirSync(folder, { recursive: true })
const server = spawn(process.execPath, [join(here, 'server.mjs'), '--data', data], {
  env: { ...process.env, HOLDFAST_NO_BROWSER: '1' },
  stdio: ['ignore', 'pipe', 'inherit'],
})
const browser = await chromium.launch({ executablePath, args: browserFlags() })
try {
  await take(browser, await addressOf(server))
} finally {
  await browser.close()
  server.kill('SIGTERM')
  rmSync(data, { recursive: true, force: true })
}
