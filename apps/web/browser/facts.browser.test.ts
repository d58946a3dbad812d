import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildServer, entryOf, serveLog } from './log-site.ts'
import { accessibilityIssues, heard, looks, startBrowser, visit } from './visitor.ts'

let program: string
let browser: Browser

beforeAll(async () => {
  program = await buildServer('web-facts')
  browser = await startBrowser()
})

afterAll(() => browser?.close())

const foam = 'First-order removal of skimmable organics, whole tank'
const entry = (page: Page, title: string) =>
  page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: title, exact: true }) })

it.each(looks)('a fact is found, set for this tank and put back, $width wide and $scheme', async (look) => {
  const site = await serveLog(program)
  const address = `${site.record}&view=facts`
  const { page, complaints } = await visit(browser, address, { from: 'heading', ...look })
  const folder = process.env.HOLDFAST_SCREENSHOTS ?? (await mkdtemp(join(tmpdir(), 'holdfast-look-')))
  await page.getByLabel('Search').fill('skimmable removal')
  const fact = entry(page, foam)
  await fact.getByText('0.2 to 3, typically 0.8 d⁻¹').waitFor()
  await fact.getByText('Recalled from its source, and not looked up again.').waitFor()
  await fact.getByText('Source and conditions').click()
  await fact.getByText('What is reckoned for this tank rests on it.').waitFor()
  await fact.getByRole('button', { name: 'Set for this tank' }).press('Enter')
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('set-foam.k.tank-low')
  await fact.getByLabel('Typical').fill('1.5')
  await fact.getByLabel('Why').fill('cup weighed for a month')
  expect(await accessibilityIssues(page)).toEqual([])
  await page.screenshot({ path: join(folder, `facts-set-${look.width}-${look.scheme}.png`), fullPage: true })
  await page.keyboard.press('Enter')
  await fact.getByText('0.2 to 3, typically 1.5 d⁻¹').waitFor()
  expect(await fact.locator('.fact-own').textContent()).toContain(
    'Set for this tank: cup weighed for a month. The catalogue says 0.2 to 3, typically 0.8 d⁻¹.',
  )
  const opener = fact.getByRole('button', { name: 'Set for this tank' })
  expect(await opener.evaluate((button) => button === document.activeElement)).toBe(true)
  expect((await heard(page)).some((said) => said.startsWith('Logged: foam.k.tank is 1.5'))).toBe(true)
  await page.getByRole('button', { name: 'Undo' }).click()
  await fact.locator('.fact-own').waitFor({ state: 'detached' })
  expect(await fact.locator('.fact-numbers').textContent()).toBe('0.2 to 3, typically 0.8 d⁻¹')

  await page.getByLabel('Search').fill('protein fed')
  await page.screenshot({
    path: join(folder, `facts-aside-${look.width}-${look.scheme}.png`),
    fullPage: true,
  })
  const check = entry(page, 'Ammonia N per protein fed, rule of farms')
  await check.getByText('No formula reads it: what is excreted').waitFor()
  expect(await check.getByRole('button').count()).toBe(0)
  expect(await accessibilityIssues(page)).toEqual([])

  await page.getByLabel('Search').fill('')
  await page.getByLabel('Order').selectOption('least sure first')
  await page.getByRole('status').filter({ hasText: 'facts' }).waitFor()
  expect(await page.locator('.fact').first().textContent()).toContain('An estimate made here.')
  const small = await page
    .locator('main :is(input:not([type=radio]), select, button, summary)')
    .evaluateAll((each) =>
      each
        .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 43.5)
        .map((one) => one.outerHTML),
    )
  expect(small).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(look.width)
  expect(await accessibilityIssues(page)).toEqual([])
  await page.screenshot({ path: join(folder, `facts-${look.width}-${look.scheme}.png`) })
  expect(complaints).toEqual([])
  await page.context().close()
})

it('a link shows the same facts, and a value set elsewhere stands at its fact', async () => {
  const body = { fact: 'kit.nitrate.step', low: 1, typical: 2, high: 3, unit: 'mg/L', reason: 'another kit' }
  const site = await serveLog(program, [entryOf({ kind: 'fact-override', body })])
  const address = `${site.record}&view=facts&words=kit.nitrate.step`
  const { page } = await visit(browser, address, { from: 'heading' })
  await page.getByText('Set for this tank: another kit').waitFor()
  expect(await page.locator('.fact').count()).toBe(1)
  await page.getByText('Source and conditions').click()
  await page.getByText('What is reckoned for this tank rests on it.').waitFor()
  await page.getByLabel('Search').fill('alg.gracil.ik')
  await page.getByText('Source and conditions').click()
  await page.getByText('Nothing that is reckoned for this tank rests on it').waitFor()
  await page.getByLabel('Search').fill('kit.nitrate.step')
  await page.getByRole('link', { name: 'Find it in the log to undo it' }).click()
  await page.getByRole('region', { name: 'What is written down' }).getByText('another kit').waitFor()
  await page.context().close()
})
