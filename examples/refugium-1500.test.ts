import type { Export } from '@holdfast/ecosystem'
import { expect, test } from 'vitest'
import { booksOf, type WayOut, waysOut } from './making/books.ts'
import { filesOf } from './making/files.ts'
import { refugium1500 } from './refugium-1500/story.ts'

const books = booksOf(refugium1500, filesOf(refugium1500), 120)

function way(ways: readonly WayOut[], name: Export): WayOut {
  const found = ways.find((one) => one.name === name)
  if (found === undefined) throw new Error(`Nothing left by ${name}.`)
  return found
}

test('in truth the media carry the phosphorus and changes of water more nitrogen than the refugium', () => {
  const phosphorus = waysOut(books, 'P')
  const nitrogen = waysOut(books, 'N')
  expect(way(phosphorus, 'ferric_media').truth).toBeGreaterThan(
    10 * way(phosphorus, 'refugium_harvest').truth,
  )
  expect(way(nitrogen, 'water_change').truth).toBeGreaterThan(2 * way(nitrogen, 'refugium_harvest').truth)
})

test('the fitted ledger says so, by bands that lie apart for phosphorus and from the middle of the other for nitrogen', () => {
  const phosphorus = waysOut(books, 'P')
  const nitrogen = waysOut(books, 'N')
  expect(way(phosphorus, 'ferric_media').low).toBeGreaterThan(3 * way(phosphorus, 'refugium_harvest').high)
  expect(way(nitrogen, 'water_change').low).toBeGreaterThan(way(nitrogen, 'refugium_harvest').fitted)
})

// So few members are too few for the band of a way as small as the harvest; the table of README.md has 200.
test('the bands hold what the two that carry the load truly carried', () => {
  for (const { name, truth, low, high } of [
    way(waysOut(books, 'P'), 'ferric_media'),
    way(waysOut(books, 'N'), 'water_change'),
  ]) {
    expect(truth, name).toBeGreaterThan(low)
    expect(truth, name).toBeLessThan(high)
  }
})
