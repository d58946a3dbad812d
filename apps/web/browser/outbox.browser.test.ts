import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildServer, serveLog } from './log-site.ts'
import { accessibilityIssues, heard, startBrowser, visit } from './visitor.ts'

let program: string
let browser: Browser

beforeAll(async () => {
  program = await buildServer('web-outbox')
  browser = await startBrowser()
})

afterAll(() => browser?.close())

const list = (page: Page) => page.getByRole('region', { name: 'What is written down' })
const notYet = (page: Page) => page.getByRole('region', { name: 'Not in the log yet' })

async function logNote(page: Page, text: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Note' }).fill(text)
  await page.getByRole('button', { name: 'Log it' }).click()
}

it('an entry that finds no server is kept, over a reload too, and stored once when it answers again', async () => {
  const site = await serveLog(program)
  const { page } = await visit(browser, `${site.record}&kind=note`, { from: 'heading' })
  await page.getByRole('textbox', { name: 'Note' }).waitFor()
  await site.stop()
  await logNote(page, 'Written in the dark.')
  await notYet(page).getByText('Written in the dark.').waitFor()
  expect(await notYet(page).textContent()).toContain(
    'kept in this browser and sent again until the log has it',
  )
  expect((await heard(page)).join()).toContain('Holdfast does not answer.')
  expect(await accessibilityIssues(page)).toEqual([])
  await logNote(page, 'And a second one.')
  await notYet(page).getByText('These 2 entries are kept').waitFor()
  await site.start()
  await page.reload()
  await list(page).getByText('Written in the dark.').waitFor()
  await list(page).getByText('And a second one.').waitFor()
  expect(await notYet(page).count()).toBe(0)
  expect(
    (await site.lines())
      .map(({ says }) => says)
      .sort()
      .slice(0, 2),
  ).toEqual(['And a second one.', 'Description of the system'])
  expect(await site.lines()).toHaveLength(3)
  await page.context().close()
})

it('an answer that is lost on its way back doubles nothing', async () => {
  const site = await serveLog(program)
  const { page } = await visit(browser, `${site.record}&kind=note`, { from: 'heading' })
  await page.route('**/api/entries', async (route) => {
    await route.fetch()
    await route.abort()
  })
  await logNote(page, 'Stored, and not told.')
  await notYet(page).getByText('Stored, and not told.').waitFor()
  expect(await site.lines()).toHaveLength(2)
  await page.unroute('**/api/entries')
  await page.getByRole('button', { name: 'Send now' }).click()
  await page.getByText('Logged: Stored, and not told.').first().waitFor()
  expect(await site.lines()).toHaveLength(2)
  await page.context().close()
})

it('an undo without a server is kept as well, and holds when it arrives', async () => {
  const site = await serveLog(program)
  const { page } = await visit(browser, `${site.record}&kind=note`, { from: 'heading' })
  await logNote(page, 'Not so.')
  await list(page).getByText('Not so.').waitFor()
  await site.stop()
  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  await notYet(page).waitFor()
  await site.start()
  await page.getByRole('button', { name: 'Send now' }).click()
  await list(page).getByText('Taken back.').waitFor()
  expect(await site.lines()).toMatchObject([{ says: 'Not so.', state: 'taken back' }, {}])
  await page.context().close()
})

it('an entry that the log refuses is kept with the reason, and mended in the form', async () => {
  const site = await serveLog(program)
  const { page } = await visit(browser, `${site.record}&kind=note`, { from: 'heading' })
  const issue = {
    code: 'no',
    where: 'Entry 1, note',
    got: 'it is too odd',
    accepted: 'A plain one.',
    next: '',
  }
  await page.route('**/api/entries', (route) => route.fulfill({ status: 422, json: { issues: [issue] } }))
  await logNote(page, 'Odd.')
  await page.getByText('“Odd.” is not logged. note: it is too odd. A plain one.').waitFor()
  await page.unroute('**/api/entries')
  await page.getByRole('button', { name: 'Mend it' }).click()
  expect(await page.getByRole('textbox', { name: 'Note' }).inputValue()).toBe('Odd.')
  await logNote(page, 'Plain.')
  await list(page).getByText('Plain.').waitFor()
  expect(await site.lines()).toMatchObject([{ says: 'Plain.' }, {}])
  await page.context().close()
})

it('what is half typed outlives a reload, each kind by itself', async () => {
  const site = await serveLog(program)
  const { page } = await visit(browser, `${site.record}&kind=note`, { from: 'heading' })
  await page.getByRole('textbox', { name: 'Note' }).fill('Half a sen')
  await page.getByRole('button', { name: 'Water change', exact: true }).click()
  await page.getByLabel('Volume changed', { exact: true }).fill('4')
  await page.reload()
  expect(await page.getByLabel('Volume changed', { exact: true }).inputValue()).toBe('4')
  await page.getByRole('button', { name: 'Note', exact: true }).click()
  expect(await page.getByRole('textbox', { name: 'Note' }).inputValue()).toBe('Half a sen')
  await page.context().close()
})

it('the form is there before the server has answered, once it has been seen', async () => {
  const site = await serveLog(program)
  const { page } = await visit(browser, `${site.record}&kind=note`, { from: 'heading' })
  await page.getByRole('textbox', { name: 'Note' }).waitFor()
  await page.route('**/api/systems**', () => undefined)
  await page.reload()
  await logNote(page, 'Without waiting.')
  await page.getByText('Logged: Without waiting.').first().waitFor()
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Record Long lagoon')
  await page.context().close()
})
