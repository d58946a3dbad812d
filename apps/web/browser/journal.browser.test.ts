import { createHash } from 'node:crypto'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildServer, entryOf, serveLog } from './log-site.ts'
import { accessibilityIssues, heard, startBrowser, visit } from './visitor.ts'

let program: string
let browser: Browser

beforeAll(async () => {
  program = await buildServer('web-journal')
  browser = await startBrowser()
})

afterAll(() => browser?.close())

/** A picture of one black point. */
const onePoint = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNkYAAAAAYAAjCB0C8AAAAASUVORK5CYII=',
  'base64',
)

const list = (page: Page) => page.getByRole('region', { name: 'What is written down' })
const line = (page: Page, says: string) => list(page).getByRole('listitem').filter({ hasText: says })
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click()

const change = (volume_L: number, parts = {}) =>
  entryOf({
    kind: 'water-change',
    body: { volume_L, text: `${volume_L} L`, typed: { volume: `${volume_L} L` } },
    ...parts,
  })

describe('what was logged', () => {
  it('is taken back with one tap, brought back with one, and taken back again', async () => {
    const site = await serveLog(program)
    const { page, complaints } = await visit(browser, `${site.record}&kind=note`, { from: 'heading' })
    await page.getByRole('textbox', { name: 'Note' }).fill('The lamp hums.')
    await press(page, 'Log it')
    await line(page, 'The lamp hums.').waitFor()
    await press(page, 'Undo')
    await line(page, 'Taken back.').waitFor()
    expect(await site.lines()).toMatchObject([{ says: 'The lamp hums.', state: 'taken back' }, {}])
    await page.getByRole('button', { name: 'Bring it back' }).first().click()
    await expect.poll(() => list(page).textContent()).not.toContain('Taken back.')
    expect(await site.lines()).toMatchObject([{ says: 'The lamp hums.', state: 'holds' }, {}])
    await press(page, 'Undo')
    await line(page, 'Taken back.').waitFor()
    expect(await heard(page)).toEqual(
      expect.arrayContaining([
        'Logged: The lamp hums.',
        'Taken back: The lamp hums.',
        'Brought back: The lamp hums.',
      ]),
    )
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('is corrected in place, by keyboard alone, and both are shown', async () => {
    const site = await serveLog(program, [change(40)])
    const { page, complaints } = await visit(browser, site.record, { from: 'heading' })
    await line(page, '40 L').getByRole('button').focus()
    await page.keyboard.press('Enter')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    const form = page.getByRole('form', { name: 'Correct this entry' })
    expect(await form.getByLabel('Volume changed', { exact: true }).inputValue()).toBe('40 L')
    expect(await form.getByLabel('Day', { exact: true }).inputValue()).toBe('2026-03-01')
    await form.getByLabel('Volume changed', { exact: true }).fill('45 L')
    await page.keyboard.press('Enter')
    await line(page, 'Corrected to “Water change of 45 L”.').waitFor()
    const [first, second] = await site.lines()
    expect([first, second].map((one) => [one?.says, one?.state, one?.entry.at])).toEqual([
      ['Water change of 45 L', 'holds', '2026-03-01'],
      ['Water change of 40 L', 'corrected', '2026-03-01'],
    ])
    expect(first?.entry.replaces).toBe(second?.entry.id)
    expect(await accessibilityIssues(page)).toEqual([])
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('is reached by its own address, open, with the way to what rests on it', async () => {
    const many = Array.from({ length: 60 }, (_, i) => change(i + 1))
    const asked = change(70, { at: '2025-12-30' })
    const site = await serveLog(program, [...many, asked])
    const { page } = await visit(browser, `${site.record}&entry=${asked.id}`, { from: 'heading' })
    const one = page.getByRole('region', { name: 'From Tuesday, 30 December 2025' })
    await one.getByText('Water change of 70 L').waitFor()
    expect(await one.getByRole('button').first().getAttribute('aria-expanded')).toBe('true')
    const way = one.getByRole('link', { name: 'What rests on it' })
    expect(await way.getAttribute('href')).toContain(`rests=${asked.id}`)
    await one.getByRole('button', { name: 'Undo', exact: true }).click()
    await one.getByText('Taken back.').waitFor()
    expect(await accessibilityIssues(page)).toEqual([])
    await page.context().close()
  })

  it('and corrected on two devices says so, and which of the two holds', async () => {
    const first = change(40)
    const site = await serveLog(program, [first])
    await site.send([change(45, { replaces: first.id })])
    await site.send([change(50, { replaces: first.id })])
    const { page } = await visit(browser, site.record, { from: 'heading' })
    const holds = line(page, 'This one came in last and holds')
    await holds.waitFor()
    expect(await holds.textContent()).toContain('Water change of 50 L')
    expect(await holds.textContent()).toContain('2 times side by side, also to “Water change of 45 L”')
    expect(await line(page, 'The one that came in last holds.').textContent()).toContain(
      'Water change of 45 L',
    )
    await page.context().close()
  })

  it('by an import stands together and is taken back and brought back as one', async () => {
    const batch = 'import-2026-03-02-a1b2c3'
    const site = await serveLog(program, [
      change(10),
      change(20, { batch }),
      change(30, { batch }),
      change(40, { batch, at: '2026-02-20' }),
    ])
    const { page } = await visit(browser, site.record, { from: 'heading' })
    await page.getByText('3 entries below came by the import of 2 Mar 2026 (a1b2c3)').waitFor()
    const states = async () => (await site.lines()).slice(0, 4).map(({ says, state }) => `${says} ${state}`)
    await page.getByRole('button', { name: 'Undo the whole import' }).click()
    await page.getByRole('button', { name: 'Bring the whole import back' }).waitFor()
    expect((await states()).filter((one) => one.endsWith('taken back'))).toHaveLength(3)
    expect(await states()).toContain('Water change of 10 L holds')
    await page.getByRole('button', { name: 'Bring the whole import back' }).click()
    await page.getByRole('button', { name: 'Undo the whole import' }).waitFor()
    expect((await states()).every((one) => one.endsWith('holds'))).toBe(true)
    await page.context().close()
  })

  it('is found by its words, which stand in the address, and older lines are behind one key', async () => {
    const many = Array.from({ length: 70 }, (_, i) =>
      change(i + 1, { at: `2026-02-${String((i % 28) + 1).padStart(2, '0')}` }),
    )
    const site = await serveLog(program, many)
    const { page } = await visit(browser, site.record, { from: 'heading' })
    await list(page).getByRole('listitem').first().waitFor()
    expect(await list(page).getByRole('listitem').count()).toBe(50)
    await press(page, 'Show older ones')
    await expect.poll(() => list(page).getByRole('listitem').count()).toBe(71)
    await page.getByLabel('Search').fill('change 17')
    await expect.poll(() => list(page).getByRole('listitem').count()).toBe(1)
    expect(new URL(page.url()).searchParams.get('words')).toBe('change 17')
    await page.reload()
    await expect.poll(() => list(page).getByRole('listitem').count()).toBe(1)
    await page.getByLabel('Search').fill('nothing of the kind')
    await page.getByText('Nothing holds “nothing of the kind”.').waitFor()
    await page.context().close()
  })
})

describe('every kind of entry', () => {
  it('is reached, has an address, and its form is open to all', async () => {
    const site = await serveLog(program)
    const { page, complaints } = await visit(browser, site.record, { from: 'heading', width: 390 })
    await press(page, 'Something else')
    const kinds = page.getByRole('group', { name: 'What to write down' })
    const names = (await kinds.getByRole('button').allTextContents()).filter((name) => name !== 'Fewer')
    expect(names.length).toBeGreaterThan(10)
    for (const name of names) {
      const rest = kinds.getByRole('button', { name: 'Something else' })
      if (await rest.isVisible()) await rest.click()
      await kinds.getByRole('button', { name, exact: true }).click()
      await page.getByRole('form', { name, exact: true }).waitFor()
      expect([name, await accessibilityIssues(page)]).toEqual([name, []])
      const width = await page.evaluate(() => document.documentElement.scrollWidth)
      expect([name, width <= 390]).toEqual([name, true])
      await press(page, 'Log it')
      // A kind of which every blank may stay empty is logged as it is; the others say what they lack.
      const answered = async () =>
        (await page.locator('form .issue').count()) > 0 || (await heard(page)).at(-1)?.startsWith('Logged')
      await expect.poll(answered, { timeout: 5000, message: name }).toBe(true)
    }
    await press(page, 'Water change')
    expect(new URL(page.url()).searchParams.get('kind')).toBe('water-change')
    await page.reload()
    await page.getByRole('form', { name: 'Water change' }).waitFor()
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('may be a picture, which is shown where its line is opened', async () => {
    const site = await serveLog(program)
    const { page, complaints } = await visit(browser, `${site.record}&kind=attachment`, { from: 'heading' })
    await press(page, 'Log it')
    await page.getByText('Picture or file: choose one first.').first().waitFor()
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'pane.png', mimeType: 'image/png', buffer: onePoint })
    await page.getByLabel('Words to it').fill('Film on the pane')
    await press(page, 'Log it')
    await line(page, 'Film on the pane (pane.png)').getByRole('button').click()
    const picture = page.getByRole('img', { name: 'Film on the pane' })
    await expect.poll(() => picture.evaluate((img: HTMLImageElement) => img.naturalWidth)).toBe(1)
    expect((await site.lines())[0]?.entry.body).toMatchObject({
      sha256: createHash('sha256').update(onePoint).digest('hex'),
      mediaType: 'image/png',
    })
    expect(await accessibilityIssues(page)).toEqual([])
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('stands first the next time when it was used last', async () => {
    const site = await serveLog(program)
    const { page } = await visit(browser, `${site.record}&kind=note`, { from: 'heading' })
    await page.getByRole('textbox', { name: 'Note' }).fill('Cleaned the pane.')
    await press(page, 'Log it')
    await line(page, 'Cleaned the pane.').waitFor()
    await page.goto(site.record)
    await page.getByRole('form', { name: 'Note' }).waitFor()
    const first = page.getByRole('group', { name: 'What to write down' }).getByRole('button').first()
    expect(await first.textContent()).toBe('Note')
    await page.context().close()
  })
})
