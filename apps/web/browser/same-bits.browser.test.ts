import { goldenYear } from '@holdfast/ecosystem/testing/golden-year'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, it } from 'vitest'
import { inFirefox } from './firefox.ts'
import { type GoldenSite, serveGolden } from './golden-site.ts'
import { startBrowser } from './visitor.ts'

const members = Array.from({ length: 64 }, (_, member) => member)
const bySixteen = [0, 16, 32, 48].map((first) => members.slice(first, first + 16))
const inTwo = [members.slice(0, 7), members.slice(7, 16)]

let site: GoldenSite
let browser: Browser
let here: readonly number[]

beforeAll(async () => {
  site = await serveGolden()
  browser = await startBrowser()
  here = goldenYear(members)
})

afterAll(async () => {
  await browser?.close()
  await site?.close()
})

it('a year has the same bits here and in the browser, in a batch of 64, in batches of 16, and alone', async () => {
  const page = await browser.newPage()
  const open = (address: string) => page.goto(address)
  expect(await site.years(open, [members])).toEqual(here)
  expect(await site.years(open, bySixteen)).toEqual(here)
  expect(await site.years(open, [[0], [63]])).toEqual([here[0], here[63]])
  expect(await site.years(open, inTwo)).toEqual(here.slice(0, 16))
  await page.close()
}, 120_000)

const firefox = inject('firefox')

// Its engine has a compiler of its own. Where there is no Firefox this is not known of the machine.
it.skipIf(firefox === '')(
  'a year has the same bits in Firefox, in two workers',
  async () => {
    expect(await inFirefox(firefox, (open) => site.years(open, inTwo))).toEqual(here.slice(0, 16))
  },
  120_000,
)
