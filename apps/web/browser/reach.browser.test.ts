import { expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('example')

const open = () => `${site.address}?place=surfaces`

it.each(looks)(
  'the section stands with its table and the places where most is left, $width wide and $scheme',
  async (look) => {
    const { page, complaints } = await visit(site.browser, open(), { from: 'heading', ...look })
    await page.getByRole('heading', { name: 'Where most is left' }).waitFor()
    expect(await page.locator('.vessel-cut').count()).toBe(2)
    expect((await page.locator('.tufts').first().getAttribute('d'))?.length).toBeGreaterThan(100)
    const [first] = await page.locator('.exposed > li').allTextContents()
    expect(first).toContain('None of your animals gets there.')
    const cautioned = await page.locator('.cautions').boundingBox()
    expect(cautioned?.y).toBeLessThan((await page.locator('.deeds').first().boundingBox())?.y ?? 0)
    const rows = (await page.locator('.reach-table tbody th').allInnerTexts()).map((row) => row.split('\n'))
    // On a telephone kind and mouths stand under the place, else in columns of their own.
    expect(rows.map(([, kind]) => kind !== undefined)).toEqual(rows.map(() => look.width < 640))
    expect(rows.map(([place = '']) => place.trim().toLowerCase())).toEqual([
      'overflow, in the open',
      'rock face, half hidden',
      'rock face, in the open',
      'glass, in the open',
    ])
    const scrolls = await page.locator('.scrolls').evaluate((one) => one.scrollWidth > one.clientWidth)
    expect(scrolls).toBe(false)
    await page.getByText('On 1 more place next to nothing grows.').waitFor()
    expect(await accessibilityIssues(page)).toEqual([])
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('.reach :is(button:not(.figure), summary, input, select, label)')]
        .filter((one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 44)
        .map((one) => one.outerHTML),
    )
    expect(small).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false)
    expect(complaints).toEqual([])
    await page.context().close()
  },
)

it('by the keyboard the range of a grazer is shown, growth is let go on, and a figure opens', async () => {
  const { page } = await visit(site.browser, open(), { from: 'heading' })
  const range = page.getByRole('button', { name: 'Where it gets: banded trochus snail' })
  await range.press('Enter')
  expect(await range.getAttribute('aria-pressed')).toBe('true')
  expect(await page.locator('.edge.in-range').count()).toBe(3)
  const before = await page.locator('.tufts').first().getAttribute('d')
  await page.getByLabel('Let it grow for').press('ArrowRight')
  await page.getByText('2 weeks at this rate').waitFor()
  expect(await page.locator('.tufts').first().getAttribute('d')).not.toBe(before)
  const rock = page.getByRole('region', { name: 'rock face' })
  await rock.getByText('Surveyed on 26 Nov 2025: green hair algae on 15.2 %.').waitFor()
  await rock.locator('.figure').press('Enter')
  await rock.locator('.derivation').getByText('half hidden 20 % of 0.3 m²').waitFor()
  expect(new URL(page.url()).searchParams.get('why')).toBe('reach.cover.rock_face.hair_green')
  await page.keyboard.press('Escape')
  const glass = page.getByRole('region', { name: 'glass' })
  expect(await glass.locator('.figure').textContent()).toBe('under 1 (0 to 4) %')
  await page.locator('.exposed .figure').first().press('Enter')
  await page.locator('.exposed .derivation').getByText('60 simulated tanks').waitFor()
  await page.context().close()
})
