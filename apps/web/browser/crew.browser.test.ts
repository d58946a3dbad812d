import { expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('example')

const open = (more = '') => `${site.address}?place=surfaces&view=crew${more}`

it.each(looks)(
  'a crew stands in steps, with the cautions before it and what each animal is for, $width wide and $scheme',
  async (look) => {
    const { page, complaints } = await visit(site.browser, open(), { from: 'heading', ...look })
    await page.getByRole('button', { name: 'Work out a crew' }).press('Enter')
    const members = page.locator('.members')
    await members.getByText('Eats green hair algae on rock face.').waitFor()
    expect((await page.locator('.cautions').first().boundingBox())?.y).toBeLessThan(
      (await members.boundingBox())?.y ?? 0,
    )
    expect(await page.locator('.steps-of-crew > li').count()).toBe(2)
    await page.getByText('Animals you would like, or never want').click()
    await page.getByText('Urchins', { exact: true }).click()
    expect(await accessibilityIssues(page)).toEqual([])
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('.crew :is(button, summary, select, label)')]
        .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 43.9)
        .map((one) => one.outerHTML),
    )
    expect(small).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false)
    expect(complaints).toEqual([])
    await page.context().close()
  },
)

it('what is refused stands in the address, and where wishes clash the page says what would give', async () => {
  const { page } = await visit(site.browser, open('&budget=10'), { from: 'heading' })
  await page.getByText('Animals you would like, or never want').press('Enter')
  await page.getByText('Urchins', { exact: true }).press('Enter')
  await page.getByRole('checkbox', { name: 'Never: tuxedo urchin, Mespilia globulus' }).press('Space')
  await page.waitForFunction(() => location.search.includes('never=Mespilia'))
  await page.getByRole('button', { name: 'Work out a crew' }).press('Enter')
  await page.getByRole('heading', { name: 'No plan' }).waitFor()
  await page.getByText('Spend 55 US dollars').waitFor()
  await page.getByLabel('Spend at most').fill('lots')
  await page.getByRole('button', { name: 'Work out a crew' }).press('Enter')
  await page.getByText('The budget: “lots” is no number of US dollars.').waitFor()
  await page.context().close()
})

it('another crew is looked at in the place of the first, which comes back; the books stand beside those without', async () => {
  const { page, complaints } = await visit(site.browser, open(), { from: 'heading', width: 390 })
  await page.getByRole('button', { name: 'Work out a crew' }).press('Enter')
  await page.getByText('What a year brings and takes').press('Enter')
  const books = page.locator('.books table')
  expect(await books.locator('tbody tr').allInnerTexts()).toEqual([
    'Eaten by the crew',
    'Algae eaten\t31.5 (12)\t2.4 (0.9)',
    'Comes in',
    'Feed\t235 (235)\t35.6 (35.6)',
  ])
  expect(await accessibilityIssues(page)).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false)
  await page.getByRole('button', { name: 'Look at this crew: 1 lawnmower or algae blenny' }).press('Enter')
  await page.locator('.members', { hasText: 'lawnmower or algae blenny' }).waitFor()
  const back = page.getByRole('button', { name: 'The first plan again' })
  expect(await back.evaluate((one) => one === document.activeElement)).toBe(true)
  expect(await page.getByRole('button', { name: 'Keep this plan' }).count()).toBe(1)
  expect(await books.count()).toBe(0)
  await back.press('Enter')
  await page.locator('.members', { hasText: 'tuxedo urchin' }).waitFor()
  expect(complaints).toEqual([])
  await page.context().close()
})

it('figures open by keys, and one press shows the plan without an animal and another the plan with it', async () => {
  const { page, complaints } = await visit(site.browser, open(), { from: 'heading' })
  await page.getByRole('button', { name: 'Work out a crew' }).press('Enter')
  const losses = page.locator('.line', { hasText: 'Banded trochus snail: eats' })
  expect(await losses.textContent()).toContain('A year costs 1.2 (0 to 7) animals: 0.5 in the first month')
  await losses.locator('.figure').last().press('Enter')
  await page.locator('.derivation').getByText('1.2 = 11 + 4 − 0 − 13.8').waitFor()
  expect(new URL(page.url()).searchParams.get('why')).toBe('crew.lost.Trochus histrio')
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'The plan without it: tuxedo urchin' }).press('Enter')
  await page.getByText('Without the tuxedo urchin.').waitFor()
  await page.waitForFunction(() => location.search.includes('never=Mespilia'))
  const back = page.getByRole('button', { name: 'The plan with it again' })
  expect(await back.evaluate((one) => one === document.activeElement)).toBe(true)
  await page.locator('.members', { hasNotText: 'tuxedo urchin' }).waitFor()
  await back.press('Enter')
  await page.locator('.members', { hasText: 'tuxedo urchin' }).waitFor()
  expect(new URL(page.url()).searchParams.get('never')).toBeNull()
  expect(complaints).toEqual([])
  await page.context().close()
})
