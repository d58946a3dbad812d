import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildSite, serveSite } from './example-site.ts'
import { accessibilityIssues, startBrowser, visit } from './visitor.ts'

let site: Awaited<ReturnType<typeof buildSite>>
let server: Awaited<ReturnType<typeof serveSite>>
let browser: Browser

beforeAll(async () => {
  site = await buildSite('production')
  server = await serveSite(site.folder)
  browser = await startBrowser()
})

afterAll(async () => {
  await browser?.close()
  await server?.close()
  await site?.remove()
})

it.each([390, 1280])('the record answers as one types, %i wide', async (width) => {
  const address = `${server.address}?place=record`
  const { page, complaints } = await visit(browser, address, { from: 'heading', width })
  const figure = page.getByLabel('Figure')
  await figure.waitFor()
  await figure.fill('5 mg/L')
  expect(await page.locator('#convert-answer').textContent()).toContain('of the ion, or of the atom')
  await page.getByRole('button', { name: '5 mg/L NO3-N' }).click()
  expect(await figure.inputValue()).toBe('5 mg/L NO3-N')
  expect(await page.locator('#convert-answer').textContent()).toContain('22.13')
  await figure.fill('5 foo')
  expect(await page.locator('#convert-answer').textContent()).toContain('has no unit we know')

  const before = await page.locator('#sum-answer').textContent()
  await page.getByLabel('Specific gravity').fill('1.025')
  expect(await page.locator('#sum-answer').textContent()).not.toBe(before)
  await page
    .getByLabel('You want to know')
    .selectOption({ label: 'How much of the ammonia is the poisonous NH3?' })
  expect(await page.locator('#sum-answer').textContent()).toMatch(/^[\d.]+ % of total ammonia$/)

  expect(await accessibilityIssues(page)).toEqual([])
  expect(complaints).toEqual([])
  await page.context().close()
})
