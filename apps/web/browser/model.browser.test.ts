import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, heard, visit } from './visitor.ts'

const site = servedSite('production')

describe('the app that ships', () => {
  it('works out ledger and outlook with the model in its workers, under the content policy', async () => {
    const { page, complaints } = await visit(site.browser, `${site.address}?span=30`)
    expect(await page.locator('.river').count()).toBe(2)
    expect(await page.locator('.fan').count()).toBeGreaterThanOrEqual(2)
    expect(await page.locator('.issue').count()).toBe(0)
    const sentence = await page.locator('.fan-view .line', { hasText: 'kept as it is' }).first().textContent()
    expect(sentence).toMatch(
      /Nitrate: [\d.]+ \([\d.]+ to [\d.]+\)\s*mg\/L NO3\s*on 28 Nov 2025 and, kept as it is, [\d.]+/,
    )
    const feed = page.locator('.legend .figure').first()
    await feed.click()
    expect(await page.locator('.derivation summary').first().textContent()).toContain('Feeding')
    expect(await page.locator('.derivation').textContent()).toContain('14.007 g/mol')
    expect(await accessibilityIssues(page)).toEqual([])
    expect(complaints).toEqual([])
    await page.context().close()
  }, 120_000)

  it('climbs a ladder with the measures fetched into its worker, under the content policy', async () => {
    const { page, complaints } = await visit(
      site.browser,
      `${site.address}?place=surfaces&view=ladder&kind=bubble`,
      {
        from: 'heading',
      },
    )
    await page.getByText('Twist off whole').waitFor({ timeout: 100_000 })
    expect(await page.locator('.issue').count()).toBe(0)
    expect(await accessibilityIssues(page)).toEqual([])
    expect(complaints).toEqual([])
    await page.context().close()
  }, 120_000)

  it('works out a crew with the solver fetched into its worker, under the content policy', async () => {
    const { page, complaints } = await visit(site.browser, `${site.address}?place=surfaces&view=crew`, {
      from: 'heading',
    })
    await page.getByRole('button', { name: 'Work out a crew' }).press('Enter')
    await page.getByText('Who may not come, and why').waitFor({ timeout: 110_000 })
    expect(await page.locator('.issue').count()).toBe(0)
    expect(await accessibilityIssues(page)).toEqual([])
    expect(complaints).toEqual([])
    await page.context().close()
  }, 120_000)

  it('reads growth and grazing off the weighed tanks, a figure each with the processes behind it', async () => {
    const { page, complaints } = await visit(site.browser, `${site.address}?place=surfaces`, {
      from: 'heading',
    })
    await page.locator('.reach-table .figure').first().press('Enter')
    await page.locator('.derivation').getByText('Processes behind it').waitFor()
    expect(complaints).toEqual([])
    await page.context().close()
  }, 120_000)

  it('stops a long run when it is told to, and says so', async () => {
    // A log of three years, so that there is something left to stop when the button is there.
    const prepare = (page: Page) =>
      page.route('**/api/systems/*', async (route) => {
        const response = await route.fetch()
        const log: { from: number } = await response.json()
        await route.fulfill({ response, json: { ...log, from: log.from - 1000 } })
      })
    const { page } = await visit(site.browser, `${site.address}?place=water&span=all`, {
      from: 'heading',
      prepare,
    })
    await page.getByRole('button', { name: 'Stop it' }).first().click({ timeout: 60_000 })
    const issue = page.locator('.issue').first()
    await issue.waitFor()
    expect(await issue.textContent()).toBe(
      'This run was stopped before it was done. What you see is from before.',
    )
    expect((await heard(page)).join(' ')).toContain('was stopped')
    await page.context().close()
  }, 120_000)

  it('holds nothing of the example in what it sends', async () => {
    const { readdir, readFile } = await import('node:fs/promises')
    const { join } = await import('node:path')
    const assets = await readdir(join(site.folder, 'assets'))
    const scripts = await Promise.all(
      assets
        .filter((name) => name.endsWith('.js'))
        .map((name) => readFile(join(site.folder, 'assets', name), 'utf8')),
    )
    expect(scripts.length).toBeGreaterThanOrEqual(2)
    expect(scripts.join()).not.toContain('hand-made for this example')
    expect(scripts.join()).not.toContain('long-lagoon')
    // The page of the design language is for those who work on it.
    expect(scripts.join()).not.toContain('The design language')
  })
})
