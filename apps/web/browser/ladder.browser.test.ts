import { expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('example')

const open = () => `${site.address}?place=surfaces&view=ladder`

it.each(looks)(
  'a ladder says why, then what to do with the cautions first, $width wide and $scheme',
  async (look) => {
    const { page, complaints } = await visit(site.browser, open(), { from: 'heading', ...look })
    await page.getByRole('heading', { name: 'In this order' }).waitFor()
    const [first] = await page.locator('.rungs > li').all()
    const text = (await first?.textContent()) ?? ''
    expect(text.indexOf('Phosphate down slowly')).toBeGreaterThan(0)
    expect(text.indexOf('Phosphate down slowly')).toBeLessThan(text.indexOf('Swap the spent medium'))
    expect(await page.locator('.rungs details[open]').count()).toBe(1)
    await page.getByText('A full portion at once').waitFor()
    await page.getByText('The last time it ended after: Take it out by hand').waitFor()
    expect(await accessibilityIssues(page)).toEqual([])
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('.ladder :is(button, summary, select, label)')]
        .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 44)
        .map((one) => one.textContent ?? ''),
    )
    expect(small).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false)
    expect(complaints).toEqual([])
    await page.context().close()
  },
)

it('another kind is asked for by the keyboard and stands in the address; what is begun goes into the log', async () => {
  const { page } = await visit(site.browser, open(), { from: 'heading' })
  await page.getByLabel('For').selectOption('bubble')
  await page.waitForFunction(() => location.search.includes('kind=bubble'))
  await page.locator('.rungs summary').nth(1).press('Enter')
  await page.locator('.rungs > li').nth(1).getByRole('button').press('Enter')
  const done = page.getByLabel('What was done')
  await done.waitFor()
  expect(await done.inputValue()).toBe('Take it out by hand')
  expect(await page.getByRole('textbox', { name: 'What it is' }).inputValue()).toBe('bubble')
  await page.context().close()
})
