import { startedServer, temporaryFolder } from '@holdfast/testing'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildServer, serveLog } from './log-site.ts'
import { accessibilityIssues, heard, looks, startBrowser, visit } from './visitor.ts'

let program: string
let browser: Browser

beforeAll(async () => {
  program = await buildServer('web-letter')
  browser = await startBrowser()
})

afterAll(() => browser?.close())

/** The real server on a folder with nothing in it. */
async function serveNothing(): Promise<string> {
  return startedServer(program, temporaryFolder()).address
}

const blank = (page: Page, label: string) => page.getByLabel(new RegExp(`^${label}`)).first()
const main = (page: Page) => page.locator('main')
const beyond = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth)

/** Opens the letter of the middle start from nothing, by keyboard alone. */
async function begin(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Describe your system' }).press('Enter')
  await page.getByRole('button', { name: 'A mixed reef with a sump' }).press('Enter')
  await blank(page, 'Name of the system').waitFor()
}

describe('a first run', () => {
  it.each(looks)(
    'goes from nothing to a letter and a first reading by keyboard, $width wide and $scheme',
    async (look) => {
      const { page, complaints } = await visit(browser, await serveNothing(), { from: 'heading', ...look })
      await page.getByText('There is no system yet').waitFor()
      expect(await accessibilityIssues(page)).toEqual([])
      await begin(page)
      await blank(page, 'Name of the system').fill('Hall reef')
      await blank(page, 'Time zone').fill('Europe/Lisbon')
      // What is typed is understood as typed, and asked about where it can mean two things.
      const water = blank(page, 'Water in the display')
      await water.fill('80 gal')
      await page.getByRole('button', { name: '80 US gal' }).press('Enter')
      expect(await water.inputValue()).toBe('80 US gal')
      await water.fill('9 foo')
      await page.getByText('Water in the display: "9 foo" has no unit we know.').waitFor()
      expect(await page.getByRole('button', { name: 'Keep this letter' }).isDisabled()).toBe(true)
      await water.fill('80 US gal')
      await page.getByText('which is 303 L').waitFor()
      expect(await accessibilityIssues(page)).toEqual([])
      expect(await beyond(page)).toBeLessThanOrEqual(0)
      const small = await page
        .locator('main :is(input, select, button)')
        .evaluateAll((each) =>
          each.filter((one) => one.getBoundingClientRect().height < 43.5).map((one) => one.outerHTML),
        )
      expect(small).toEqual([])
      await page.getByRole('button', { name: 'Keep this letter' }).press('Enter')
      await page.getByRole('link', { name: 'Log a first reading' }).press('Enter')
      await page.getByText('Nitrate', { exact: true }).click()
      await page.keyboard.type('5 mg/L NO3')
      await page.keyboard.press('Enter')
      await main(page).getByText('Logged: Nitrate 5 mg/L NO3').waitFor()
      await page.keyboard.press('Tab')
      // Outside a field a letter leads to a place.
      await page.locator('h1').evaluate(() => (document.activeElement as HTMLElement).blur())
      await page.keyboard.press('t')
      await page.getByText('Nitrate 5 mg/L NO3, today').waitFor()
      await page.getByText('Test phosphate first').waitFor()
      expect(await accessibilityIssues(page)).toEqual([])
      expect(await beyond(page)).toBeLessThanOrEqual(0)
      expect(complaints).toEqual([])
      await page.context().close()
    },
  )

  it('goes from nothing to the first ledger in five taps, each of them in plain sight', async () => {
    const { page, complaints } = await visit(browser, await serveNothing(), { from: 'heading', width: 390 })
    const opened = performance.now()
    /** What there is to read on the way, each once: the letter is the same for two taps. */
    const read = new Set<string>()
    for (const tap of [
      page.getByRole('link', { name: 'Describe your system' }),
      page.getByRole('button', { name: 'A mixed reef with a sump' }),
      // The letter is long, and says at its head that it may be kept as it is.
      page.getByRole('link', { name: 'kept', exact: true }),
      page.getByRole('button', { name: 'Keep this letter' }),
      page.getByRole('link', { name: 'See its ledger and outlook' }),
    ]) {
      await tap.waitFor()
      read.add((await main(page).textContent()) ?? '')
      await expect
        .poll(() => tap.evaluate((one) => one.getBoundingClientRect().bottom <= innerHeight))
        .toBe(true)
      await tap.tap()
    }
    await page.locator('.river').first().waitFor({ timeout: 100_000 })
    expect(await page.locator('.issue').count()).toBe(0)
    expect(await page.locator('.legend .figure').count()).toBeGreaterThan(10)
    const words = [...read].join(' ').split(/\s+/).length
    // Who reads every word reads 238 a minute (Brysbaert 2019, J. Mem. Lang. 109:104047, from memory).
    const minutes = (performance.now() - opened) / 60_000 + words / 238
    expect(minutes).toBeLessThan(10)
    expect(await beyond(page)).toBeLessThanOrEqual(0)
    expect(complaints).toEqual([])
    await page.context().close()
  }, 120_000)

  it('keeps a letter that was begun over a reload', async () => {
    const { page } = await visit(browser, await serveNothing(), { from: 'heading' })
    await begin(page)
    await blank(page, 'Mass of sand').fill('12 kg')
    await page.reload()
    expect(await blank(page, 'Mass of sand').inputValue()).toBe('12 kg')
    await page.context().close()
  })
})

/** A letter as it begins, kept: the system is there. */
async function keepBegun(page: Page) {
  await begin(page)
  await page.getByRole('button', { name: 'Keep this letter' }).click()
  await page.getByRole('link', { name: 'Log a first reading' }).waitFor()
}

describe('the letter of a system', () => {
  it('is mended and changed from a day on, and each is undone with one key', async () => {
    const { page, complaints } = await visit(browser, await serveNothing(), { from: 'heading' })
    await keepBegun(page)
    await page.getByRole('link', { name: 'Letter' }).click()
    await page.getByText('As it holds since').waitFor()
    await page.getByRole('button', { name: 'sand', exact: true }).waitFor({ state: 'detached' })
    await page.getByRole('button', { name: /^The bottom is bare/ }).click()
    await page.getByText('It was so before, and the letter was wrong').click()
    await page.getByRole('button', { name: 'Keep the changes' }).click()
    await main(page).getByText('Corrected: Description of the system, mended').waitFor()
    await page.getByRole('button', { name: 'sand', exact: true }).waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    await blank(page, 'Mass of sand').waitFor()
    expect((await heard(page)).join(' ')).toContain('Taken back')
    await blank(page, 'Fed a day').fill('3')
    await page.getByLabel('From', { exact: true }).fill('2026-03-01')
    await page.getByText('which goes on holding from').waitFor()
    await page.getByRole('button', { name: 'Keep the changes' }).click()
    await main(page).getByText('Logged: Description of the system').waitFor()
    expect(await accessibilityIssues(page)).toEqual([])
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('written in litres is read in gallons, and what is not touched stays to the last digit', async () => {
    const address = await serveNothing()
    const { page } = await visit(browser, address, { from: 'heading' })
    await keepBegun(page)
    await page.evaluate(() => localStorage.setItem('holdfast.ways', JSON.stringify({ units: 'US' })))
    await page.getByRole('link', { name: 'Letter' }).click()
    await blank(page, 'Water in the display').waitFor()
    expect(await blank(page, 'Water in the display').inputValue()).toBe('63.4 US gal')
    expect(await blank(page, 'Temperature').inputValue()).toBe('77.9 °F')
    await blank(page, 'Water in the sump').fill('20')
    await page.getByRole('button', { name: 'Keep the changes' }).click()
    await main(page).getByText('Logged: Description of the system').waitFor()
    await expect.poll(() => blank(page, 'Water in the sump').inputValue()).toBe('20 US gal')
    const [{ id }] = await (await fetch(`${address}/api/systems`)).json()
    const { lines } = await (await fetch(`${address}/api/systems/${id}/entries`)).json()
    expect(lines[0].entry.body.document.vessels).toMatchObject([{ water: '240 L' }, { water: '20 US gal' }])
    await page.context().close()
  })

  it('is put away with the system, whose log stays, and both are brought back', async () => {
    const { page } = await visit(browser, await serveNothing(), { from: 'heading' })
    await keepBegun(page)
    await page.getByRole('link', { name: 'Letter' }).click()
    await page.getByRole('button', { name: 'Put this system away' }).click()
    await page.getByText('There is no system yet').waitFor()
    await page.getByText('Put away: Mixed reef').waitFor()
    await page.getByRole('button', { name: 'Bring it back' }).click()
    await page.getByRole('heading', { name: 'Mixed reef' }).waitFor()
    await page.context().close()
  })

  it('describes an animal that no list has, which can then be logged, and undo takes it back', async () => {
    const { page, complaints } = await visit(browser, await serveNothing(), { from: 'heading' })
    await keepBegun(page)
    await page.getByRole('link', { name: 'Letter' }).click()
    await page.getByText('As it holds since').waitFor()
    await page.getByRole('button', { name: 'an animal that your lists do not have' }).press('Enter')
    const name = blank(page, 'Name of your own animal')
    await name.fill('Trochus histrio')
    await page.getByText('"Trochus histrio" is the name of another').waitFor()
    expect(await page.getByRole('button', { name: 'Keep the changes' }).isDisabled()).toBe(true)
    await name.fill('Grey blenny')
    await page.getByRole('button', { name: 'least tank of Grey blenny' }).press('Enter')
    await blank(page, 'Grey blenny: least tank').fill('300 L')
    await page.getByRole('button', { name: 'taste of Grey blenny for green hair algae' }).press('Enter')
    await blank(page, 'Grey blenny: taste for green hair algae').fill('90')
    expect(await accessibilityIssues(page)).toEqual([])
    await page.getByRole('button', { name: 'Keep the changes' }).click()
    await main(page).getByText('Logged: Description of the system').waitFor()
    const log = await page.context().newPage()
    await log.goto(page.url().replace('view=letter', 'view=log&kind=animals'))
    await log.locator('datalist option', { hasText: 'Grey blenny' }).waitFor({ state: 'attached' })
    await log.close()
    await page.getByRole('button', { name: 'Undo' }).click()
    await name.waitFor({ state: 'detached' })
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('that was not written as one says so', async () => {
    const site = await serveLog(program)
    const { page } = await visit(browser, `${site.record}&view=letter`, { from: 'heading' })
    await page.getByText('This system was not described by a letter.').waitFor()
    await page.context().close()
  })
})

describe('the frame', () => {
  it('finds an act by typing, lists its keys, and its letters can be switched off', async () => {
    const site = await serveLog(program)
    const { page, complaints } = await visit(browser, `${site.record}&view=ways`, { from: 'heading' })
    await page.getByRole('heading', { name: 'Units and dates' }).waitFor()
    await page.keyboard.press('/')
    await page.getByRole('combobox').waitFor()
    await page.keyboard.type('change wat')
    expect(await accessibilityIssues(page)).toEqual([])
    await page.keyboard.press('Enter')
    await page.getByRole('form', { name: 'Water change' }).waitFor()
    await page.keyboard.press('?')
    await page.getByRole('heading', { name: 'Keys' }).waitFor()
    expect(await accessibilityIssues(page)).toEqual([])
    await page.getByText('Single letters and marks are keys').click()
    await page.keyboard.press('Escape')
    await page.locator('dialog').waitFor({ state: 'detached' })
    await page.keyboard.press('t')
    expect(new URL(page.url()).searchParams.get('place')).toBe('record')
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('writes volumes, decimal marks and dates as the keeper chose, and remembers it', async () => {
    const site = await serveLog(program)
    const { page } = await visit(browser, `${site.record}&view=ways`, { from: 'heading' })
    await page.getByText('US gallons, inches, pounds').click()
    await page.getByText('Comma, 0,05').click()
    await page.getByText('March 1, 2026').first().click()
    await page.reload()
    await page
      .getByText(
        /So a system reads 159 US gal at 77,9 °F, phosphate 0,05 mg\/L PO4, on Sunday, March 1, 2026/,
      )
      .waitFor()
    await page.context().close()
  })
})
