import { startedServer, temporaryFolder } from '@holdfast/testing'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildServer } from './log-site.ts'
import { accessibilityIssues, heard, looks, startBrowser, visit } from './visitor.ts'

let program: string
let browser: Browser

beforeAll(async () => {
  program = await buildServer('web-walk')
  browser = await startBrowser()
})

afterAll(() => browser?.close())

/** Readings of eight weeks, as they are copied out of a spreadsheet. */
const cells = [
  'Date\tNO3 (mg/L NO3)\tPO4 (mg/L PO4)',
  ...[4, 5, 5, 6, 8, 7, 9, 10].map(
    (nitrate, week) =>
      `${new Date(Date.UTC(2026, 0, 4 + 7 * week)).toISOString().slice(0, 10)}\t${nitrate}\t${(0.03 + week / 100).toFixed(2)}`,
  ),
].join('\n')

const link = (page: Page, name: string | RegExp) => page.getByRole('link', { name })
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name })
const says = (page: Page, words: string | RegExp) => page.locator('main').getByText(words).first()

/** A figure that waits for the model waits long on a busy machine. */
const patient = { timeout: 60_000 }

it.each(looks)(
  'a stranger comes from nothing to a first ledger, asks why, logs, corrects and undoes, by keyboard, $width px and $scheme',
  async (look) => {
    const address = await startedServer(program, temporaryFolder()).address
    const { page, complaints } = await visit(browser, address, { from: 'heading', ...look })
    const expectOpenToAll = async (step: string) => {
      expect([step, await accessibilityIssues(page)]).toEqual([step, []])
      const width = await page.evaluate(() => document.documentElement.scrollWidth)
      expect([step, width <= look.width]).toEqual([step, true])
    }

    await link(page, 'Describe your system').press('Enter')
    await button(page, 'A mixed reef with a sump').press('Enter')
    await page.getByLabel(/^Name of the system/).fill('Hall reef')
    await button(page, 'Keep this letter').press('Enter')
    await link(page, 'Log a first reading').waitFor()
    await expectOpenToAll('letter')

    await link(page, 'Import').press('Enter')
    await page.getByLabel('Or paste cells').fill(cells)
    await button(page, 'Read these cells').press('Enter')
    await button(page, /^Store 16 readings/).press('Enter')
    await page.getByRole('heading', { name: 'Stored: 16 readings.' }).waitFor(patient)
    await expectOpenToAll('import')

    await link(page, 'The ledger of Hall reef').press('Enter')
    await page.locator('.river').first().waitFor(patient)
    await page.locator('.fan').first().waitFor(patient)
    await expectOpenToAll('ledger and outlook')
    const lever = page.getByRole('slider').first()
    const stood = await lever.inputValue()
    await lever.press('ArrowRight')
    await lever.press('ArrowRight')
    expect(await lever.inputValue()).not.toBe(stood)
    await page.locator('.fan-view').first().getByText('With the levers as you set them').waitFor(patient)
    await expect.poll(() => page.locator('.outline-old').count(), patient).toBe(0)
    await expectOpenToAll('a dragged lever')

    await page.locator('.fan-view .figure').first().press('Enter')
    const entries = page.locator('.derivation .entries a')
    await expect.poll(() => entries.count()).toBe(8)
    await expectOpenToAll('why')
    await entries.filter({ hasText: 'Nitrate 9' }).press('Enter')

    const line = page.locator('.one-entry')
    await line.getByText('Nitrate 9').first().waitFor()
    await line.getByRole('button', { name: 'Correct', exact: true }).press('Enter')
    const form = page.getByRole('form', { name: 'Correct this entry' })
    await form.getByRole('textbox', { name: 'Nitrate', exact: true }).fill('9.5 mg/L NO3')
    await page.keyboard.press('Enter')
    await line.getByText(/Corrected to .Nitrate 9.5/).waitFor()
    await expectOpenToAll('correct')
    await button(page, 'Undo').first().press('Enter')
    await expect.poll(() => line.textContent()).not.toContain('Corrected')

    await page.locator('h1').evaluate(() => (document.activeElement as HTMLElement).blur())
    await page.keyboard.press('l')
    await page
      .getByRole('form', { name: 'Reading of the water' })
      .getByText('Phosphate', { exact: true })
      .click()
    await page.keyboard.type('0.08 mg/L PO4')
    await page.keyboard.press('Enter')
    await says(page, 'Logged: Phosphate 0.08 mg/L PO4').waitFor()
    await button(page, 'Undo').first().press('Enter')
    await says(page, 'Taken back: Phosphate 0.08 mg/L PO4').waitFor()
    await expectOpenToAll('log and undo')
    expect(await heard(page)).toEqual(
      expect.arrayContaining(['Logged: Phosphate 0.08 mg/L PO4', 'Taken back: Phosphate 0.08 mg/L PO4']),
    )
    expect(complaints).toEqual([])
    await page.context().close()
  },
  180_000,
)
