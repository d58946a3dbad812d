import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('example')

describe('the derivation of a figure', () => {
  it.each(looks)('stands under its line, with its sources, at $width px, $scheme', async (look) => {
    const { page, complaints } = await visit(site.browser, site.address, look)
    await page.locator('.legend .figure').filter({ hasText: 'mg N' }).first().press('Enter')
    const derivation = page.locator('.derivation')
    await derivation.getByText('Oct 2025').first().waitFor()
    expect(await derivation.textContent()).toContain('g/mol')
    expect(await derivation.textContent()).toContain('Summed from 30 Aug 2025 to 28 Nov 2025')
    const small = await derivation
      .locator('button, .entries a')
      .evaluateAll((each) => each.filter((one) => one.getBoundingClientRect().height < 43.5).length)
    expect(small).toBe(0)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(look.width)
    expect(await accessibilityIssues(page)).toEqual([])
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('has the decimal mark of its reader, in formulas too', async () => {
    const prepare = (page: Page) =>
      page.addInitScript(() => localStorage.setItem('holdfast.ways', JSON.stringify({ decimal: 'comma' })))
    const { page } = await visit(site.browser, site.address, { prepare })
    await page.locator('.legend .figure').filter({ hasText: 'mg N' }).first().press('Enter')
    const formulas = page.locator('.derivation .formula')
    await formulas.first().waitFor()
    const texts = await formulas.allTextContents()
    expect(texts.filter((text) => /\d,\d/.test(text)).length).toBeGreaterThan(0)
    expect(texts.filter((text) => /\d\.\d/.test(text))).toEqual([])
    await page.context().close()
  })

  it('has an address: Back puts it away, Forward opens it again, and so does a link', async () => {
    const { page } = await visit(site.browser, site.address)
    await page.locator('.worth-knowing .figure').first().press('Enter')
    const named = new URL(page.url()).searchParams.get('why')
    expect(named).toMatch(/^(share|stream|basin)\./)
    const derivation = page.locator('.derivation')
    const says = await derivation.locator('p').first().textContent()
    await page.goBack()
    await derivation.waitFor({ state: 'detached' })
    expect(new URL(page.url()).searchParams.get('why')).toBeNull()
    await page.goForward()
    await derivation.waitFor()
    await page.reload()
    await derivation.waitFor()
    expect(await derivation.locator('p').first().textContent()).toBe(says)
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('figure')
    await page.context().close()
  })

  it('opened by a link shows the row of the table or the day of the fan that holds it', async () => {
    const row = 'row.N.foam.skimmer.water.skimmable.outside.skimmate'
    for (const [why, words] of [
      [row, 'Foam fractionation'],
      ['fan.nitrate.2025-12-20', 'Nitrate on 20 Dec 2025'],
    ] as const) {
      const { page } = await visit(site.browser, `${site.address}?why=${why}`, { from: 'fans' })
      await page.locator('.derivation').waitFor()
      expect(await page.locator('.derivation').first().textContent()).toContain(words)
      expect(await page.locator('.derivation').count()).toBe(1)
      await page.context().close()
    }
  })

  it('goes with Escape, and the focus is on its figure again', async () => {
    const { page } = await visit(site.browser, site.address)
    const figure = page.locator('.legend .figure').first()
    await figure.press('Enter')
    await page.locator('.derivation').getByRole('button', { name: 'Copy as text' }).press('Escape')
    expect(await page.locator('.derivation').count()).toBe(0)
    expect(await figure.evaluate((one) => one === document.activeElement)).toBe(true)
    expect(new URL(page.url()).searchParams.get('why')).toBeNull()
    await page.context().close()
  })

  it('is copied as text with its units and the day', async () => {
    const { page } = await visit(site.browser, site.address)
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write'])
    await page.locator('.legend .figure').filter({ hasText: 'mg P' }).first().press('Enter')
    await page.getByRole('button', { name: 'Copy as text' }).press('Enter')
    await page.getByText('Copied.').first().waitFor()
    const text = await page.evaluate(() => navigator.clipboard.readText())
    expect(text.split('\n')[0]).toMatch(/: [\d\u202f.]+ \([\d\u202f.]+ to [\d\u202f.]+\) mg P$/)
    expect(text).toContain('Entries of your log it rests on\n- ')
    expect(text).toMatch(/Worked out by Holdfast on \d+ \w+ \d{4}\.$/)
    await page.context().close()
  })

  it('is found from the entry too: what rests on a reading, and the way back', async () => {
    const { page, complaints } = await visit(site.browser, `${site.address}?rests=reading-9-n`)
    const rests = page.getByRole('region', { name: 'What rests on this entry' })
    await rests.getByText('6 Nov 2025: nitrate 10 mg/L NO3').waitFor()
    expect(await rests.textContent()).toMatch(
      /one of 27 readings.*You read 10 mg\/L NO3, which with the error of its kit is [\d.]+ to [\d.]+; that day the tanks have [\d.]+ \(/,
    )
    await rests.getByRole('button').last().press('Enter')
    expect(await rests.locator('.derivation').count()).toBe(1)
    expect(await accessibilityIssues(page)).toEqual([])
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('that rests on many entries shows the newest, and earlier ones at a press', async () => {
    const { page } = await visit(site.browser, site.address)
    await page.locator('.fan-view .figure').first().press('Enter')
    const entries = page.locator('.derivation .entries a')
    await entries.first().waitFor()
    expect(await entries.count()).toBe(8)
    await page.getByRole('button', { name: 'Show 27 of 27 earlier ones' }).click()
    await expect.poll(() => entries.count()).toBe(35)
    expect(await entries.first().getAttribute('href')).toBe('?place=record&entry=reading-0-n')
    await page.context().close()
  })
})
