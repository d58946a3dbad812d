import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Browser, chromium, type Page } from 'playwright-core'
import { inject } from 'vitest'

/** How a page is looked at: telephone and desk, by day and by night. */
export const looks = [
  { width: 390, scheme: 'light' },
  { width: 390, scheme: 'dark' },
  { width: 1280, scheme: 'light' },
  { width: 1280, scheme: 'dark' },
] as const

export interface Visit {
  readonly page: Page
  /** Everything the page complained of: console errors, uncaught errors, breaches of the content policy. */
  readonly complaints: string[]
}

/** The browser of this machine, as the test run found it. */
export const startBrowser = (): Promise<Browser> => chromium.launch(inject('browser'))

export interface Look {
  readonly width?: number
  readonly scheme?: 'light' | 'dark'
  /** What must be there before the visit begins. */
  readonly from?: 'heading' | 'fans' | 'rivers'
  /** Done to the page before it goes anywhere. */
  readonly prepare?: (page: Page) => Promise<unknown>
}

export async function visit(
  browser: Browser,
  address: string,
  { width = 1280, scheme = 'light', from = 'rivers', prepare }: Look = {},
): Promise<Visit> {
  const context = await browser.newContext({
    viewport: { width, height: 844 },
    colorScheme: scheme,
    hasTouch: width < 600,
    locale: 'en-GB',
  })
  const page = await context.newPage()
  const complaints: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
  })
  page.on('pageerror', (error) => complaints.push(error.message))
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(
        `policy: ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}:${event.lineNumber}`,
      )
    })
  })
  await page.addInitScript(() => {
    const heard: string[] = []
    Object.assign(window, { heard })
    new MutationObserver(() => {
      const said = document.getElementById('spoken')?.textContent
      if (said && said !== heard.at(-1)) heard.push(said)
    }).observe(document, { subtree: true, childList: true, characterData: true })
  })
  await prepare?.(page)
  await page.goto(from === 'heading' ? address : ofWater(address))
  await page.locator('h1').waitFor()
  // The model takes its time on a machine that is busy with other tests.
  if (from !== 'heading') await page.locator('.fan').first().waitFor({ timeout: 60_000 })
  if (from === 'rivers') await page.locator('.river').first().waitFor({ timeout: 90_000 })
  await page.evaluate(() => document.fonts.ready)
  return { page, complaints }
}

/** Fans and rivers are in the place of the water. */
function ofWater(address: string): string {
  const asked = new URL(address)
  asked.searchParams.set('place', 'water')
  return asked.href
}

/** All that the live region said so far: one sentence is soon over another. */
export const heard = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { heard: readonly string[] }).heard)

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** What axe-core finds wrong, a line each. Its script is put in by the driver, past the page's policy. */
export async function accessibilityIssues(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe)
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; help: string; nodes: { html: string }[] }[] }> }
    }
    const { violations } = await axe.run()
    return violations.map(
      ({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
    )
  })
}
