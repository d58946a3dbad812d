import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildSite, serveSite } from './example-site.ts'
import { accessibilityIssues, looks, startBrowser, visit } from './visitor.ts'

let site: Awaited<ReturnType<typeof buildSite>>
let server: Awaited<ReturnType<typeof serveSite>>
let browser: Browser

beforeAll(async () => {
  site = await buildSite('example')
  server = await serveSite(site.folder)
  browser = await startBrowser()
})

afterAll(async () => {
  await browser?.close()
  await server?.close()
  await site?.remove()
})

it.each(looks)(
  'a surface says what was surveyed and what the model has, $width wide and $scheme',
  async (look) => {
    const { page, complaints } = await visit(browser, `${server.address}?place=surfaces`, {
      from: 'heading',
      ...look,
    })
    const rock = page.getByRole('region', { name: 'rock face' })
    await rock.getByText('Surveyed on 26 Nov 2025: hair green on 15.2 %.').waitFor()
    await rock.locator('.figure').first().press('Enter')
    await rock.locator('.derivation').waitFor()
    expect(await rock.locator('.tuft').count()).toBe(1)
    expect(await accessibilityIssues(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    expect(complaints).toEqual([])
    await page.context().close()
  },
)
