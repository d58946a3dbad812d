import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { exampleData } from '../src/fixtures/example-system.ts'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('example')

const { system, asOf } = exampleData
/** The invented reef as if its glass had been wet for three weeks. */
const young = {
  ...exampleData,
  from: asOf - 21,
  system: { ...system, surfaces: system.surfaces.map((one) => ({ ...one, age_days: 0 })) },
}
const asYoung = (page: Page) =>
  page.route(`**/api/systems/${system.id}`, (route) => route.fulfill({ json: young }))

const open = () => `${site.address}?place=water&view=start-up`

it.each(looks)(
  'a start-up says when the first animals may come, what to do with the caution first, and what is still to be shown, $width wide and $scheme',
  async (look) => {
    const { page, complaints } = await visit(site.browser, open(), {
      from: 'heading',
      prepare: asYoung,
      ...look,
    })
    await page.getByRole('heading', { name: 'Start-up', exact: true }).waitFor()
    await page.getByText('Not ready. It may be on 30 Dec 2025').waitFor()
    const picture = page.getByRole('img', { name: 'Nitrite will stand highest about' })
    expect(await picture.locator('.middle').count()).toBe(4)
    const dose = (await page.locator('.deeds > li', { hasText: 'ammonium chloride' }).textContent()) ?? ''
    expect(dose.indexOf('burn eyes')).toBeGreaterThanOrEqual(0)
    expect(dose.indexOf('burn eyes')).toBeLessThan(dose.indexOf('Dissolve 0.76 g'))
    await page.getByText('Add no animal yet').waitFor()
    expect(await page.locator('.conditions li').count()).toBe(6)
    await page.getByText('0.2 mg/L N, 29 Nov 2025. Asked is at most 0.05 mg/L N for 7 days.').waitFor()
    expect(await accessibilityIssues(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false)
    expect(complaints).toEqual([])
    await page.context().close()
  },
)

it('by the keyboard one comes from it to the log and to its limits, and finds it by typing', async () => {
  const { page } = await visit(site.browser, open(), { from: 'heading', prepare: asYoung })
  const limits = page.getByRole('link', { name: 'Set these limits yourself' })
  await limits.waitFor()
  expect(await limits.getAttribute('href')).toContain('family=commissioning')
  await page.getByRole('link', { name: 'Ledger and outlook' }).press('Enter')
  await page.getByRole('link', { name: 'Start-up' }).press('Enter')
  await page.getByRole('heading', { name: 'What not to do' }).waitFor()
  await page.getByRole('link', { name: 'Today', exact: true }).press('Enter')
  await page.waitForURL((address) => address.searchParams.get('place') !== 'water')
  await page.getByRole('heading', { name: 'Today', exact: true }).waitFor()
  await page.keyboard.press('/')
  await page.getByRole('combobox', { name: 'What you want to do' }).fill('start-up')
  await page.keyboard.press('Enter')
  await page.getByRole('heading', { name: 'What not to do' }).waitFor()
  await page.context().close()
})

it('an old reef is told that its start-up is over, and nothing that would harm it', async () => {
  const { page } = await visit(site.browser, open(), { from: 'heading' })
  await page.getByText('The start-up of this system is over').waitFor()
  expect(await page.getByRole('heading', { name: 'What to do next' }).count()).toBe(0)
  await page.getByRole('link', { name: 'Ledger and outlook' }).press('Enter')
  await page.locator('.fan').first().waitFor()
  expect(await page.getByRole('link', { name: 'Start-up' }).count()).toBe(0)
  await page.context().close()
})
