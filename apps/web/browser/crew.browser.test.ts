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
    await page.getByText('Urchins').click()
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
  await page.getByText('Urchins').press('Enter')
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
