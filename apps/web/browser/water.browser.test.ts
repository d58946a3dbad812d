import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('example')

describe('the water page', () => {
  it.each(looks)(
    'is whole, within its width and open to all at $width px, $scheme',
    async ({ width, scheme }) => {
      const { page, complaints } = await visit(site.browser, site.address, { width, scheme })
      expect(await page.locator('.river').count()).toBe(2)
      expect(await page.locator('.fan').count()).toBe(4)
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
      expect(await accessibilityIssues(page)).toEqual([])
      const folder = process.env.HOLDFAST_SCREENSHOTS ?? (await mkdtemp(join(tmpdir(), 'holdfast-look-')))
      await page.screenshot({ path: join(folder, `water-${width}-${scheme}.png`), fullPage: true })
      expect(complaints).toEqual([])
      await page.context().close()
    },
  )

  it('is watched: a breach of the content policy and a control without a name are both noticed', async () => {
    const { page, complaints } = await visit(site.browser, site.address)
    await page.evaluate(() => {
      document.querySelector('main')?.insertAdjacentHTML('beforeend', '<p style="color: red"><input></p>')
    })
    await expect.poll(() => complaints.join()).toContain('policy: style-src-attr')
    expect((await accessibilityIssues(page)).join()).toContain('label')
    await page.context().close()
  })

  it('says where the log lives and what is not modelled yet', async () => {
    const { page } = await visit(site.browser, site.address)
    expect(await page.locator('main').textContent()).toContain('Your log is kept in the file long-lagoon.db')
    await page.getByRole('link', { name: 'Not modelled yet' }).click()
    expect(await page.locator('#not-modelled').textContent()).toContain('refugium: its growth and harvests')
    expect(await page.locator('#not-modelled').textContent()).toContain('moves nothing in this ledger')
    await page.context().close()
  })

  it('loads nothing from anywhere else, and no font but the latin ones', async () => {
    const context = await site.browser.newContext()
    const page = await context.newPage()
    const asked: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    await page.goto(`${site.address}?place=water`)
    await page.locator('.fan').first().waitFor()
    expect(asked.filter((address) => !address.startsWith(site.address))).toEqual([])
    expect(
      asked.filter((address) => /woff/.test(address)).every((address) => /-latin-.*\.woff2$/.test(address)),
    ).toBe(true)
    await context.close()
  })

  it('opens the derivation of a figure in place by keyboard, and puts it away again', async () => {
    const { page, complaints } = await visit(site.browser, site.address)
    const figure = page.locator('.legend .figure').filter({ hasText: 'mg N' }).first()
    await figure.focus()
    await page.keyboard.press('Enter')
    const derivation = page.locator('.derivation')
    expect(await derivation.textContent()).toContain('g/mol')
    expect(await figure.getAttribute('aria-expanded')).toBe('true')
    const below = await derivation.boundingBox()
    const line = await figure.boundingBox()
    expect(below?.y ?? 0).toBeGreaterThan(line?.y ?? 0)
    expect(await accessibilityIssues(page)).toEqual([])
    await page.keyboard.press('Enter')
    expect(await derivation.count()).toBe(0)
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('reaches every control by Tab, in the order of the page, with a visible focus', async () => {
    const { page } = await visit(site.browser, site.address)
    const controls = await page.evaluate(() => {
      const all = [
        ...document.querySelectorAll<HTMLElement>('a, button:not(:disabled), input, select, [tabindex="0"]'),
      ].filter((element) => element.checkVisibility())
      all.forEach((element, i) => {
        element.dataset.order = String(i)
      })
      return all.filter(
        (element) => !(element instanceof HTMLInputElement && element.type === 'radio' && !element.checked),
      ).length
    })
    const walked: number[] = []
    for (let i = 0; i < controls; i += 1) {
      await page.keyboard.press('Tab')
      const at = await page.evaluate(() => {
        const element = document.activeElement as HTMLElement
        const shown = getComputedStyle(
          element.matches('[type=radio]') ? (element.parentElement ?? element) : element,
        )
        return { order: Number(element.dataset.order), outline: shown.outlineStyle }
      })
      expect(at.outline).toBe('solid')
      walked.push(at.order)
    }
    expect(walked).toEqual([...walked].sort((a, b) => a - b))
    expect(new Set(walked).size).toBe(controls)
    await page.context().close()
  })

  it('walks a fan day by day with the arrow keys and shows its table with T', async () => {
    const { page } = await visit(site.browser, site.address)
    await page.getByRole('group', { name: /^Nitrate/ }).focus()
    const readout = page.locator('.fan-view .readout').first()
    await page.keyboard.press('ArrowRight')
    const first = await readout.textContent()
    expect(first).toMatch(/^29 Nov 2025: [\d.]+ \([\d.]+ to [\d.]+\) mg\/L NO3$/)
    await page.keyboard.press('ArrowLeft')
    expect(await readout.textContent()).not.toBe(first)
    await page.keyboard.press('t')
    const table = page.getByRole('table', { name: 'Nitrate, mg/L NO3' })
    // 90 days before today, today, and 56 days to come.
    expect(await table.locator('tbody tr').count()).toBe(147)
    await page.context().close()
  })

  it('shows the ledger whole as a table behind one key', async () => {
    const { page } = await visit(site.browser, site.address)
    await page.getByRole('button', { name: 'Show the ledger as a table' }).click()
    const rows = page.getByRole('table', { name: 'Ledger of nitrogen' }).locator('tbody tr')
    expect(await rows.filter({ hasText: 'Settled waste that rots in weeks' }).count()).toBeGreaterThan(0)
    await page.context().close()
  })

  it('keeps the places of the streams when another span is chosen', async () => {
    const { page } = await visit(site.browser, site.address)
    const places = () =>
      page
        .locator('.river')
        .first()
        .locator('.stream .label')
        .evaluateAll((all) => all.map((label) => label.getAttribute('x')))
    const before = await places()
    await page.getByText('Last 30 days').click()
    await page.getByText('from 29 Oct 2025').waitFor()
    expect(await places()).toEqual(before)
    expect(page.url()).toContain('span=30')
    await page.context().close()
  })

  it('redraws the fans while the lever moves, and keeps figure and handle in step', async () => {
    const { page, complaints } = await visit(site.browser, site.address)
    const nitrate = page.locator('.fan-view').first()
    const under = nitrate.getByText('With the levers as you set them')
    const base = await nitrate.locator('.fan-wide').getAttribute('d')
    const handle = page.getByRole('slider', { name: 'Water each time' })
    await handle.focus()
    for (let i = 0; i < 20; i += 1) await page.keyboard.press('ArrowRight')
    await under.waitFor()
    const median = nitrate.locator('.outline-levers .outline-median')
    expect(await median.getAttribute('d')).not.toBe(await nitrate.locator('.fan-median').getAttribute('d'))
    expect(await page.getByRole('textbox', { name: 'Water each time' }).inputValue()).toBe('50')
    await expect.poll(() => page.locator('.outline-old').count()).toBe(0)
    // The ground stands still: only the lines of the levers move.
    expect(await nitrate.locator('.fan-wide').getAttribute('d')).toBe(base)
    await page.getByRole('button', { name: 'As today' }).click()
    await expect.poll(() => under.count()).toBe(0)
    expect(complaints).toEqual([])
    await page.context().close()
  })

  it('begins no line with the stop that ends a sentence, on the narrowest of screens and wider', async () => {
    for (const width of [320, 360, 390, 430]) {
      const { page } = await visit(site.browser, site.address, { width })
      const fallen = await page.locator('.with-mark').evaluateAll((all) =>
        all.map((one) => {
          const stop = document.createRange()
          stop.selectNodeContents(one.lastChild ?? one)
          const figure = one.firstElementChild?.getBoundingClientRect()
          return {
            text: stop.toString(),
            isFallen: stop.getBoundingClientRect().top >= (figure?.bottom ?? 0),
          }
        }),
      )
      expect(fallen.filter(({ text }) => /^[.,;:]$/.test(text)).length).toBeGreaterThan(3)
      expect(fallen.filter(({ isFallen }) => isFallen)).toEqual([])
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
      await page.context().close()
    }
  })

  it('asks one worker for all of its views', async () => {
    const { page } = await visit(site.browser, site.address)
    expect(page.workers()).toHaveLength(1)
    await page.context().close()
  })

  it('takes a typed value on Enter, with its unit, and says what it cannot take', async () => {
    const { page } = await visit(site.browser, site.address)
    const typed = page.getByRole('textbox', { name: 'Water each time' })
    await typed.fill('10 US gal')
    await typed.press('Enter')
    await expect.poll(() => typed.inputValue()).toBe('37.9')
    await typed.fill('900')
    await typed.press('Enter')
    expect(await page.getByRole('alert').textContent()).toContain('Give 0 to 150 L.')
    expect(await accessibilityIssues(page)).toEqual([])
    await page.context().close()
  })

  it('gives a finger 44 px on every control that stands by itself', async () => {
    const { page } = await visit(site.browser, site.address, { width: 390 })
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll<HTMLElement>(
          'nav a, .key, .figure, .span label, input[type=range], .typed input',
        ),
      ]
        .filter((element) => element.checkVisibility())
        .map((element) => ({ text: element.textContent, height: element.getBoundingClientRect().height }))
        .filter(({ height }) => height < 43.5),
    )
    expect(small).toEqual([])
    await page.context().close()
  })
})
