import { expect, it } from 'vitest'
import { servedSite } from './served-site.ts'
import { accessibilityIssues, looks, visit } from './visitor.ts'

const site = servedSite('example')

it.each(looks)(
  'a surface says what was surveyed and what the model has, $width wide and $scheme',
  async (look) => {
    const { page, complaints } = await visit(site.browser, `${site.address}?place=surfaces&view=grip`, {
      from: 'heading',
      ...look,
    })
    const rock = page.getByRole('region', { name: 'rock face' })
    await rock.getByText('Surveyed on 26 Nov 2025: green hair algae on 15.2 %.').waitFor()
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
