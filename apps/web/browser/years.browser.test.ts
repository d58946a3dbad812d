import type { Entry } from '@holdfast/logbook'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildServer, entryOf, serveLog } from './log-site.ts'
import { accessibilityIssues, startBrowser, visit } from './visitor.ts'
import { fiveYears, threeReadings } from './years.ts'

let program: string
let browser: Browser

beforeAll(async () => {
  program = await buildServer('web-years')
  browser = await startBrowser()
})

afterAll(() => browser?.close())

/** A log of some length, in the real server, with the real model in the page. */
async function withLog(entries: readonly Entry[]) {
  const site = await serveLog(program)
  for (let sent = 0; sent < entries.length; sent += 500) await site.send(entries.slice(sent, sent + 500))
  return { record: site.record, water: site.record.replace('record', 'water'), send: site.send }
}

/** Until nothing on the page is rough or old. */
const worked = (page: Page) =>
  expect.poll(() => page.locator('.working span').count(), { timeout: 120_000 }).toBe(0)

async function expectWhole(page: Page, width: number): Promise<void> {
  expect(await accessibilityIssues(page)).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
}

describe('a log', () => {
  it.each([
    ['with nothing in it', () => [], 1280, 'No recent reading weighs the simulated tanks'],
    ['of three readings', threeReadings, 390, 'from 23 Feb 2026 to 1 Mar 2026'],
  ] as const)('%s has rivers and fans, wide as they are', async (_, entries, width, words) => {
    const { water, record } = await withLog(entries())
    const { page, complaints } = await visit(browser, water, { width, scheme: 'dark' })
    await worked(page)
    expect(await page.locator('main').textContent()).toContain(words)
    await expectWhole(page, width)
    await page.goto(record)
    await page.locator('.log-line').first().waitFor()
    await expectWhole(page, width)
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('in which another device wrote is taken in on coming back, and what was shown is old until then', async () => {
    const { water, send } = await withLog(threeReadings())
    const { page } = await visit(browser, water)
    await worked(page)
    expect(await page.locator('.view.old').count()).toBe(0)
    await send([entryOf({ kind: 'water-change', at: '2026-03-05', body: { volume_L: 30, text: '30 L' } })])
    const said = page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          new MutationObserver(() => {
            const old = document.querySelector('.view.old .working')?.textContent
            if (old) resolve(old)
          }).observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true })
          document.dispatchEvent(new Event('visibilitychange'))
        }),
    )
    expect(await said).toContain('is being worked out again')
    await worked(page)
    expect(await page.locator('.view.old').count()).toBe(0)
    expect(await page.locator('main').textContent()).toContain('from 23 Feb 2026 to 5 Mar 2026')
    await page.context().close()
  })

  it.each([390, 1280])(
    'of five years of daily entries is whole, and no list is endless, %i wide',
    async (width) => {
      const entries = fiveYears()
      expect(entries.length).toBeGreaterThan(3650)
      const { water, record } = await withLog(entries)
      const { page, complaints } = await visit(browser, water, { width })
      await worked(page)
      await page.locator('.fan-view .figure').first().press('Enter')
      const behind = page.locator('.derivation .entries a')
      await behind.first().waitFor()
      expect(await behind.count()).toBe(8)
      await page.getByRole('button', { name: /^Show 50 of 38\d\d earlier ones$/ }).waitFor()
      await expectWhole(page, width)
      await page.goto(record)
      await page.locator('.log-line').first().waitFor()
      expect(await page.locator('.log-line').count()).toBe(50)
      await page.getByLabel('Search').fill('survey')
      await page.getByText('green hair algae on 10 %').first().waitFor()
      await expectWhole(page, width)
      expect(complaints).toEqual([])
      await page.context().close()
    },
    240_000,
  )
})
