import { expect, test } from 'vitest'
import { goldenYear } from '../testing/golden-year.ts'

const all = Array.from({ length: 64 }, (_, member) => member)

// The same year in a browser's workers: apps/web/browser/same-bits.browser.test.ts.
test('a year has the bits that are stored, and the same in a batch of 64, in batches of 16, and alone', () => {
  const together = goldenYear(all)
  expect(new Set(together).size).toBe(64)
  // Moves with every fact, formula and step; `npx vitest run golden -u` stores it anew, and the change says why.
  expect(together.slice(0, 4).map((year) => year.toString(16))).toMatchInlineSnapshot(`
    [
      "8349fd67",
      "4ee67c51",
      "ef7fb8fd",
      "8179168e",
    ]
  `)
  expect(goldenYear(all.slice(16, 32))).toEqual(together.slice(16, 32))
  for (const member of [0, 17, 63]) expect(goldenYear([member])).toEqual([together[member]])
}, 60_000)
