import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, heard, looks, visit } from './visitor.ts'

const site = servedSite('example')

const slider = (page: Page, name: string) => page.getByRole('slider', { name })
const typed = (page: Page, name: string) => page.getByRole('textbox', { name: new RegExp(`^${name}`) })
const linesOf = (page: Page, mark: string, fan = 0) =>
  page.locator('.fan-view').nth(fan).locator(`.outline-${mark} .outline-median`)
const path = async (page: Page, mark: string, fan = 0) =>
  (await linesOf(page, mark, fan).count()) > 0 ? linesOf(page, mark, fan).getAttribute('d') : null

async function keepAs(page: Page, name: string) {
  await page.getByLabel('Keep the levers as they stand').fill(name)
  await page.keyboard.press('Enter')
  await page.getByText(`Kept: ${name}.`, { exact: true }).first().waitFor()
}

describe('a lever', () => {
  it.each(looks)(
    'draws its lines over the fan while it is dragged, at $width px, $scheme',
    async ({ width, scheme }) => {
      const { page, complaints } = await visit(site.browser, site.address, { width, scheme })
      const base = await page.locator('.fan-wide').first().getAttribute('d')
      await slider(page, 'Water each time').scrollIntoViewIfNeeded()
      const track = await slider(page, 'Water each time').boundingBox()
      if (!track) throw new Error('The lever is not in sight.')
      const at = (share: number) => [track.x + share * track.width, track.y + track.height / 2] as const
      await page.mouse.move(...at(0.2))
      await page.mouse.down()
      const drawn = new Set<string | null>()
      for (const share of [0.3, 0.5, 0.7, 0.9]) {
        await page.mouse.move(...at(share))
        await expect.poll(() => page.locator('.outline-old').count()).toBe(0)
        await expect.poll(async () => drawn.has(await path(page, 'levers'))).toBe(false)
        drawn.add(await path(page, 'levers'))
        const shown = Number(await typed(page, 'Water each time').inputValue())
        expect(shown).toBe(Number(await slider(page, 'Water each time').inputValue()))
      }
      await page.mouse.up()
      expect(drawn.size).toBe(4)
      expect(await page.locator('.fan-wide').first().getAttribute('d')).toBe(base)
      expect(page.url()).toContain('volume=')
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
      expect(await accessibilityIssues(page)).toEqual([])
      const folder = process.env.HOLDFAST_SCREENSHOTS ?? (await mkdtemp(join(tmpdir(), 'holdfast-look-')))
      await page.screenshot({ path: join(folder, `levers-${width}-${scheme}.png`) })
      expect(complaints).toEqual([])
      await page.context().close()
    },
  )

  it('says what a step costs, and on a telephone stands alone till another is chosen', async () => {
    const { page } = await visit(site.browser, site.address, { width: 390 })
    const feed = slider(page, 'Feed a day')
    expect(await feed.isVisible()).toBe(false)
    await page.locator('.lever-choice').getByText('Feed').click()
    expect(await feed.isVisible()).toBe(true)
    expect(await slider(page, 'Water each time').isVisible()).toBe(false)
    const described = await feed.getAttribute('aria-describedby')
    expect(await page.locator(`[id="${described}"]`).textContent()).toBe(
      'Today: 2.4 g. A step up: +36.5 g of feed a year.',
    )
    await page.context().close()
  })

  it('of feed and of media moves the fans too, and the media their load', async () => {
    const { page } = await visit(site.browser, site.address)
    await typed(page, 'Feed a day').fill('1.2')
    await page.keyboard.press('Enter')
    await linesOf(page, 'levers').waitFor()
    const [nitrate, load] = [await path(page, 'levers', 0), await path(page, 'levers', 2)]
    await typed(page, 'Media each time').fill('0.1 kg')
    await page.keyboard.press('Enter')
    await expect.poll(() => path(page, 'levers', 2)).not.toBe(load)
    expect(await path(page, 'levers', 0)).toBe(nitrate)
    expect(new URL(page.url()).searchParams.get('media')).toBe('100')
    await page.context().close()
  })

  it('counts gallons for a keeper who reads gallons', async () => {
    const prepare = (page: Page) =>
      page.addInitScript(() => localStorage.setItem('holdfast.ways', JSON.stringify({ units: 'US' })))
    const { page } = await visit(site.browser, site.address, { prepare })
    expect(await typed(page, 'Water each time').inputValue()).toBe('7.93')
    await typed(page, 'Water each time').fill('10')
    await page.keyboard.press('Enter')
    await expect.poll(() => new URL(page.url()).searchParams.get('volume')).toMatch(/^37\.85/)
    expect(await page.getByText('a week, 12.6 % of your 79.3 US gal each time').count()).toBe(1)
    await page.context().close()
  })
})

describe('variants', () => {
  it.each(looks)(
    'are kept, compared, removed and brought back by keyboard, at $width px, $scheme',
    async ({ width, scheme }) => {
      const { page, complaints } = await visit(site.browser, site.address, { width, scheme })
      await slider(page, 'Water each time').focus()
      for (let i = 0; i < 10; i += 1) await page.keyboard.press('ArrowRight')
      await keepAs(page, 'more water')
      await linesOf(page, 'A').waitFor()
      // The levers stand where the variant does, so one line says both.
      expect(await linesOf(page, 'levers').count()).toBe(0)
      await page.getByRole('button', { name: 'As today' }).press('Enter')
      expect(await linesOf(page, 'A').count()).toBe(1)

      const row = page.locator('.compare tbody tr').nth(1)
      expect(await row.locator('th').textContent()).toContain('40 L of water every 14 days')
      const figure = row.locator('.figure').nth(1)
      await figure.focus()
      await page.keyboard.press('Enter')
      expect(await page.locator('.compare .derivation').textContent()).toContain('Wilson 1927')
      expect(await accessibilityIssues(page)).toEqual([])
      await page.keyboard.press('Escape')

      await page.getByRole('button', { name: 'Remove more water' }).press('Enter')
      await expect.poll(() => linesOf(page, 'A').count()).toBe(0)
      await page.getByRole('button', { name: 'Undo' }).press('Enter')
      await linesOf(page, 'A').waitFor()
      expect(await heard(page)).toEqual(expect.arrayContaining(['Removed: more water.', 'Undone.']))
      expect(complaints).toEqual([])
      await page.context().close()
    },
  )

  it('are there after a reload, set the levers again, and refuse a second of the same', async () => {
    const { page } = await visit(site.browser, site.address)
    await typed(page, 'Water each time').fill('60')
    await page.keyboard.press('Enter')
    await keepAs(page, 'twice the water')
    await page.getByRole('button', { name: 'As today' }).click()
    await page.reload()
    await linesOf(page, 'A').waitFor()
    await page.getByRole('button', { name: 'Set the levers as in twice the water' }).click()
    await expect.poll(() => typed(page, 'Water each time').inputValue()).toBe('60')
    await page.getByLabel('Keep the levers as they stand').fill('again')
    await page.keyboard.press('Enter')
    expect(await page.getByRole('alert').textContent()).toBe(
      'Variant: "twice the water" has the levers in the same places. Move one first.',
    )
    await page.context().close()
  })
})

describe('the rivers', () => {
  it.each(looks)('are walked from stream to stream by keyboard, at $width px, $scheme', async (look) => {
    const { page, complaints } = await visit(site.browser, site.address, look)
    await page.getByRole('group', { name: /^nitrogen/ }).focus()
    const readout = page.locator('.rivers .readout')
    await page.keyboard.press('ArrowRight')
    expect(await readout.first().textContent()).toMatch(/^Feed: [\d\s]+ .*mg N, 100 .*% of what you fed\.$/)
    // The same stream is marked in the other picture.
    expect(await page.locator('.stream.picked').count()).toBe(2)
    await page.keyboard.press('ArrowDown')
    expect(await readout.first().textContent()).toMatch(/^Change in /)
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('End')
    expect(await readout.last().textContent()).toMatch(/^Not explained: none\.$/)
    expect(await accessibilityIssues(page)).toEqual([])
    await page.keyboard.press('t')
    await page.getByRole('table', { name: 'Ledger of phosphorus' }).waitFor()
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('and the fans are told apart where the machine gives the colours, and where more contrast is asked', async () => {
    for (const media of [{ forcedColors: 'active' }, { contrast: 'more' }] as const) {
      const { page } = await visit(site.browser, site.address, { prepare: (one) => one.emulateMedia(media) })
      expect(await page.locator('.river').first().locator('pattern path').count()).toBeGreaterThan(0)
      expect(await page.locator('.river').last().locator('pattern circle').count()).toBeGreaterThan(0)
      const inks = await page
        .locator('.fan-median')
        .evaluateAll((all) => all.map((line) => getComputedStyle(line).strokeDasharray))
      expect(new Set(inks).size).toBe(3)
      expect(await accessibilityIssues(page)).toEqual([])
      const folder = process.env.HOLDFAST_SCREENSHOTS ?? (await mkdtemp(join(tmpdir(), 'holdfast-look-')))
      await page.screenshot({ path: join(folder, `water-${Object.keys(media)[0]}.png`), fullPage: true })
      await page.context().close()
    }
  })

  it('carry the chance of being in band under the fans, and in their tables', async () => {
    const { page } = await visit(site.browser, site.address)
    const nitrate = page.locator('.fan-view').first()
    expect(await nitrate.locator('.strip .week').count()).toBe(8)
    await nitrate.getByRole('button', { name: 'As a table' }).click()
    const table = page.getByRole('table', { name: 'Nitrate, mg/L NO3' })
    expect(await table.locator('td:nth-of-type(4) .figure').count()).toBe(8)
    await page.context().close()
  })
})
