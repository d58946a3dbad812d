import { join } from 'node:path'
import type { JournalLine } from '@holdfast/logbook'
import { root } from '@holdfast/testing'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { exampleData } from '../src/fixtures/example-system.ts'
import { buildServer, entryOf, serveLog } from './log-site.ts'
import { accessibilityIssues, heard, startBrowser, visit } from './visitor.ts'

let program: string
let browser: Browser

beforeAll(async () => {
  program = await buildServer('web-import')
  browser = await startBrowser()
})

afterAll(() => browser?.close())

const { system } = exampleData
const frags = entryOf({
  kind: 'system',
  system: 'frags',
  at: '2025-01-01',
  body: { tells: 'change', document: {}, system: { ...system, id: 'frags', name: 'Frag shelf' } },
})

const sheet = (name: string): string => join(root, 'validation', 'spreadsheets', name)
const twoTanks = sheet('12-two-tanks-merged-headers.xlsx')
const undecidable = sheet('04-slashes-undecidable.csv')

const asked = (page: Page, words: string | RegExp) => page.getByRole('group', { name: words })
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name })
const heading = (page: Page, name: string | RegExp) => page.getByRole('heading', { name })
/** A sentence on the page, which may be said in more than one place. */
const text = (page: Page, words: string | RegExp) => page.locator('main').getByText(words).first()
const bring = (page: Page, file: string | { name: string; mimeType: string; buffer: Buffer }) =>
  page.locator('input[type=file]').setInputFiles(file)

/** What a system has, but its description. */
async function readings(address: string, of: string): Promise<readonly JournalLine[]> {
  const { origin } = new URL(address)
  const { lines } = await (await fetch(`${origin}/api/systems/${of}/entries?kind=reading&limit=1000`)).json()
  return lines
}

const holding = (lines: readonly JournalLine[]) => lines.filter(({ state }) => state === 'holds')

/** What a thumb does not hit, a line each. */
const tooSmall = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('main button, main input, main textarea, main .acts a')].flatMap((each) => {
      const { width, height } = each.getBoundingClientRect()
      return height < 43.5 || width < 20 ? [`${each.outerHTML.slice(0, 80)} ${width} x ${height}`] : []
    }),
  )

async function expectOpenToAll(page: Page, width: number): Promise<void> {
  expect(await accessibilityIssues(page)).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
  expect(await tooSmall(page)).toEqual([])
}

describe.each([
  { width: 390, scheme: 'dark' },
  { width: 1280, scheme: 'light' },
] as const)('a workbook of two tanks, $width wide', (look) => {
  it('goes from the file to the log, and is known the second time', async () => {
    const site = await serveLog(program, [frags])
    const address = `${site.record}&view=import&system=${system.id}`
    const { page, complaints } = await visit(browser, address, { from: 'heading', ...look })
    await heading(page, 'Bring in a spreadsheet').waitFor()
    await expectOpenToAll(page, look.width)
    await bring(page, twoTanks)
    await heading(page, '12-two-tanks-merged-headers.xlsx').waitFor()
    await text(page, '76 readings understood; 2 questions need an answer.').waitFor()
    const phosphate = page.getByRole('listitem').filter({ hasText: 'Display: 10 readings' }).nth(1)
    expect(await phosphate.textContent()).toContain('“63”0.063 mg/L PO4')
    expect(await page.getByRole('list', { name: 'Odd cells' }).textContent()).toContain(
      'both tanks!C14“8.1”: a row of reckoned figures, not of readings. Left out.',
    )
    await expectOpenToAll(page, look.width)
    expect(await button(page, /^Store/).count()).toBe(0)

    await asked(page, 'Which system is “Display”?').getByRole('button', { name: system.name }).click()
    await asked(page, 'Which system is “Frag tank”?').getByRole('button', { name: 'Frag shelf' }).click()
    await asked(page, /"ND" means not detected/)
      .getByLabel('A number above 0')
      .fill('3')
    await button(page, 'Take this number').click()
    await text(page, 'under 0.003 mg/L PO4').waitFor()
    await button(page, 'Store 76 readings').click()
    await heading(page, 'Stored: 76 readings.').waitFor()
    expect(holding(await readings(address, system.id))).toHaveLength(47)
    expect(holding(await readings(address, 'frags'))).toHaveLength(29)
    await expectOpenToAll(page, look.width)

    await button(page, 'Bring in another sheet').click()
    await bring(page, twoTanks)
    await text(page, '76 readings understood; nothing of it is new.').waitFor()
    await text(page, 'Answered as for the last sheet with these headings.').waitFor()
    const chosen = asked(page, 'Which system is “Frag tank”?').getByRole('button', { pressed: true })
    expect(await chosen.textContent()).toBe('Frag shelf')
    expect(await button(page, /^Store/).count()).toBe(0)

    await text(page, '76 values are in the log already.').waitFor()
    expect(await heard(page)).toContain('76 readings understood; nothing of it is new.')
    expect(complaints).toEqual([])
    await page.context().close()
  })
})

it('what was stored is taken back from every system at once, brought back, and leads to the ledger', async () => {
  const site = await serveLog(program, [frags])
  const address = `${site.record}&view=import&system=${system.id}`
  const { page, complaints } = await visit(browser, address, { from: 'heading' })
  await bring(page, twoTanks)
  await asked(page, 'Which system is “Display”?').getByRole('button', { name: system.name }).click()
  await asked(page, 'Which system is “Frag tank”?').getByRole('button', { name: 'Frag shelf' }).click()
  await button(page, 'Store 76 readings').click()
  await button(page, 'Undo the whole import').click()
  await heading(page, 'Taken back: 76 readings.').waitFor()
  const left = async () =>
    (await Promise.all([system.id, 'frags'].map((of) => readings(address, of)))).map(
      (lines) => holding(lines).length,
    )
  await expect.poll(left).toEqual([0, 0])
  await button(page, 'Bring the whole import back').click()
  await expect.poll(left).toEqual([47, 29])
  expect(await heard(page)).toEqual(
    expect.arrayContaining(['Stored: 76 readings.', 'Taken back: 76 readings.']),
  )
  await page.getByRole('link', { name: `The ledger of ${system.name}` }).click()
  await heading(page, 'Ledger').waitFor()
  expect(complaints).toEqual([])
  await page.context().close()
})

it('what can be read two ways waits for the keeper, who may think better of an answer', async () => {
  const site = await serveLog(program)
  const { page } = await visit(browser, `${site.record}&view=import`, { from: 'heading', width: 390 })
  await bring(page, undecidable)
  await text(page, '0 readings understood; 7 questions need an answer.').waitFor()
  expect(await asked(page, /Day first or month first/).textContent()).toContain('A3 “1/2/25”')
  await page.getByRole('link', { name: 'To what is asked' }).click()
  for (const answer of ['month first', 'US (3.785 L)', 'NO3', 'PO4', '25/25 °C'])
    await page.getByRole('button', { name: answer, exact: true }).press('Enter')
  for (const unit of await page.getByRole('button', { name: 'mg/L', exact: true }).all()) await unit.click()
  await text(page, '“11”11 mg/L NO3 on 2 Jan 2025').waitFor()
  await page.getByRole('button', { name: 'day first', exact: true }).click()
  await text(page, '“11”11 mg/L NO3 on 1 Feb 2025').waitFor()
  await page.getByRole('button', { name: 'N', exact: true }).click()
  await text(page, '“11”48.693 mg/L NO3 on 1 Feb 2025').waitFor()
  await button(page, 'Leave it out').click()
  await button(page, 'Store 54 readings, 2 notes and one water change').click()
  await heading(page, /^Stored: 54 readings/).waitFor()

  await button(page, 'Bring in another sheet').click()
  await bring(page, undecidable)
  await page.getByRole('button', { name: 'NO3', exact: true }).click()
  await text(page, 'Answered as for the last sheet with these headings.').waitFor()
  await text(page, 'Much of this sheet differs from what an earlier import left').waitFor()
  const mended = page.getByRole('list', { name: 'Mended cells' }).getByRole('listitem').first()
  expect(await mended.textContent()).toBe('B3Nitrate, 1 Feb 2025: 11 NO3-N now 11 NO3')
  await expectOpenToAll(page, 390)
  await page.context().close()
})

it('a sending that fails loses nothing and doubles nothing', async () => {
  const site = await serveLog(program)
  const address = `${site.record}&view=import`
  const { page } = await visit(browser, address, { from: 'heading' })
  await bring(page, sheet('01-plain-weekly.csv'))
  const store = button(page, /^Store/)
  await store.waitFor()
  const words = (await store.textContent())?.replace('Store ', '')
  await site.stop()
  await store.click()
  await text(page, /Holdfast: it does not answer.*0 of \d+ entries are in the log/).waitFor()
  await site.start()
  await button(page, 'Send the others').click()
  await heading(page, `Stored: ${words}.`).waitFor()
  await button(page, 'Bring in another sheet').click()
  await bring(page, sheet('01-plain-weekly.csv'))
  await text(page, 'nothing of it is new').waitFor()
  await page.context().close()
})

it('cells are pasted, and what is no sheet is refused in words', async () => {
  const site = await serveLog(program)
  const { page, complaints } = await visit(browser, `${site.record}&view=import`, { from: 'heading' })
  await page.getByLabel('Or paste cells').fill('Date\tNO3 (mg/L)\n2026-02-01\t5\n')
  await button(page, 'Read these cells').click()
  await text(page, 'One reading understood; nothing more needs an answer.').waitFor()
  await button(page, 'Another sheet').click()
  const wide = Array.from({ length: 5000 }, (_, at) => `c${at}`).join(',')
  await bring(page, { name: 'wide.csv', mimeType: 'text/csv', buffer: Buffer.from(`${wide}\n${wide}\n`) })
  await text(page, 'Sheet "wide.csv": it has too many columns in a row (the most is 2,000).').waitFor()
  const picture = Buffer.from('89504e470d0a1a0a0000000d', 'hex')
  await bring(page, { name: 'tank.png', mimeType: 'image/png', buffer: picture })
  await text(page, 'Sheet "tank.png": the file is a PNG picture').waitFor()
  const ours = await (await fetch(`${new URL(site.record).origin}/api/export.csv`)).arrayBuffer()
  await bring(page, { name: 'holdfast.csv', mimeType: 'text/csv', buffer: Buffer.from(ours) })
  await text(page, 'it is an export of Holdfast').waitFor()
  await expect.poll(async () => (await heard(page)).at(-1)).toContain('Bring it back under Copies')
  expect(await site.lines()).toHaveLength(1)
  expect(complaints).toEqual([])
  await page.context().close()
})
