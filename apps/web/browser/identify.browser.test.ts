import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('example')

const open = (noted = '') => `${site.address}?place=surfaces&view=identify${noted && `&noted=${noted}`}`

/** Buttons and summaries in sight that a thumb would miss. */
const tooSmall = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.identify :is(button, summary)')]
      .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 44)
      .map((one) => one.textContent ?? ''),
  )

const isWide = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth > innerWidth)

it.each(looks)('a brown slime is named by looks alone, $width wide and $scheme', async (look) => {
  const { page, complaints } = await visit(site.browser, open(), { from: 'heading', ...look })
  await page.getByRole('heading', { name: 'What shape does it grow in?' }).waitFor()
  expect(await page.locator('.drawn .tuft').count()).toBe(14)
  await page.getByRole('button', { name: 'lumps or strings of slime' }).click()
  await page.getByRole('heading', { name: 'What colour is it in white light?' }).waitFor()
  await page.getByText('Treat slime as toxic until it is known').waitFor()
  expect(await accessibilityIssues(page)).toEqual([])
  await page.getByRole('button', { name: 'brown', exact: true }).click()
  await page.getByRole('heading', { name: 'What it is' }).waitFor()
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('finding')
  await page.getByText('Gloves and glasses; stop what starves the water.').waitFor()
  expect(await page.getByRole('link', { name: 'What to do about it' }).getAttribute('href')).toContain(
    'kind=dino',
  )
  expect(await accessibilityIssues(page)).toEqual([])
  expect(await tooSmall(page)).toEqual([])
  expect(await isWide(page)).toBe(false)
  expect(complaints).toEqual([])
  await page.context().close()
})

it('is walked by the keyboard alone, an answer taken back, and nothing lost by a reload', async () => {
  const { page } = await visit(site.browser, open('colour.wine_red'), { from: 'heading' })
  const shape = page.getByRole('heading', { name: 'What shape does it grow in?' })
  await shape.waitFor()
  await page.getByRole('button', { name: 'a short nap or brush' }).press('Enter')
  await page.waitForFunction(() => document.activeElement?.id === 'look')
  await page.reload()
  await page.getByRole('button', { name: 'Take back: shape' }).press('Enter')
  await shape.waitFor()
  expect(page.url()).toContain('noted=colour.wine_red')
  await page.getByRole('button', { name: 'I cannot tell' }).press('Enter')
  await page.getByText('shape cannot tell').waitFor()
  await page.context().close()
})

it('while it may be slime what is touched is told from memory, and what was smelt may be said', async () => {
  const { page } = await visit(site.browser, open('form.slimy_sheet,colour.brown'), { from: 'heading' })
  await page.getByText('Note something else').click()
  const offered = page.locator('.any-trait')
  await offered.getByText('touch nothing for it now').waitFor()
  await offered.getByRole('button', { name: 'feel' }).press('Enter')
  await page.getByRole('heading', { name: 'How does a bit feel between gloved fingers?' }).waitFor()
  await page.getByText('touch nothing now, it may be toxic slime').waitFor()
  await page.getByText('Never blow air into it').waitFor()
  await offered.getByRole('button', { name: 'smell' }).press('Enter')
  await page.getByText('never bend over unknown slime').waitFor()
  expect(await accessibilityIssues(page)).toEqual([])
  await page.context().close()
})

it('what was noted goes into the log in words, is taken back there, and leads back to the key', async () => {
  const { page } = await visit(site.browser, open('form.ball,colour.bright_green'), { from: 'heading' })
  await page.getByRole('button', { name: 'Write it into the log' }).click()
  const noted = page.getByRole('group', { name: 'What you noted' })
  await noted.waitFor()
  expect(await noted.locator('li span').allInnerTexts()).toEqual(['form\nball', 'colour\nbright green'])
  expect(await accessibilityIssues(page)).toEqual([])
  await page.getByText('rock face', { exact: true }).click()
  await noted.getByRole('button', { name: 'Take back: colour' }).press('Enter')
  await page.getByText('Reads: Noted on rock face: form ball').waitFor()
  await noted.getByRole('link', { name: 'Note more' }).click()
  await page.getByRole('button', { name: 'Take back: shape' }).waitFor()
  // What was filled in beside the looks is there when one comes back.
  await page.getByRole('button', { name: 'Write it into the log' }).click()
  await page.getByText('Reads: Noted on rock face: form ball').waitFor()
  await page.context().close()
})
