import { readFile } from 'node:fs/promises'
import { startedServer, temporaryFolder } from '@holdfast/testing'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildServer, entryOf, serveLog } from './log-site.ts'
import { accessibilityIssues, heard, startBrowser, visit } from './visitor.ts'

let program: string
let browser: Browser

beforeAll(async () => {
  program = await buildServer('web-copies')
  browser = await startBrowser()
})

afterAll(() => browser?.close())

it.each([
  { width: 390, scheme: 'dark' },
  { width: 1280, scheme: 'light' },
] as const)('a log goes out of one Holdfast and into an empty one, $width wide', async (look) => {
  const note = entryOf({ kind: 'note', body: { text: 'The lamp hums.' } })
  const site = await serveLog(program, [note])
  const from = await visit(browser, `${site.record}&view=copies`, { from: 'heading', ...look })
  const link = from.page.getByRole('link', { name: 'As JSON' })
  await link.waitFor()
  expect(await accessibilityIssues(from.page)).toEqual([])
  const [saved] = await Promise.all([from.page.waitForEvent('download'), link.press('Enter')])
  expect(saved.suggestedFilename()).toMatch(/^holdfast-\d{4}-\d\d-\d\d\.json$/)
  const buffer = await readFile(await saved.path())
  expect(from.complaints).toEqual([])

  const { page, complaints } = await visit(browser, await startedServer(program, temporaryFolder()).address, {
    from: 'heading',
    ...look,
  })
  await page.getByRole('link', { name: 'Bring back a copy of a log' }).press('Enter')
  const field = page.getByLabel('A file that was taken from here')
  await field.setInputFiles({ name: 'tank.csv', mimeType: 'text/csv', buffer: Buffer.from('Date,NO3\n') })
  await page.getByText('it is no export of Holdfast').first().waitFor()
  await field.setInputFiles({ name: saved.suggestedFilename(), mimeType: 'application/json', buffer })
  await page
    .getByText(/^The copy of .* is in: 2 entries new\.$/)
    .first()
    .waitFor()
  expect((await heard(page)).at(-1)).toContain('2 entries new')
  expect(await accessibilityIssues(page)).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(look.width)
  const small = await page
    .locator('main :is(input, .copies a, .acts a)')
    .evaluateAll((each) =>
      each.filter((one) => one.getBoundingClientRect().height < 43.5).map((one) => one.outerHTML),
    )
  expect(small).toEqual([])
  await page.getByRole('link', { name: 'To your systems' }).press('Enter')
  await page.getByRole('heading', { name: 'Long lagoon' }).waitFor()
  // The refusal of the sheet, which the browser notes by itself.
  expect(complaints).toEqual([expect.stringContaining('422')])
  await page.context().close()
  await from.page.context().close()
})
