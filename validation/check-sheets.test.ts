import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

import { checkSheets } from './check-sheets.ts'

const folder = fileURLToPath(new URL('./spreadsheets', import.meta.url))

// Invented sheets with what a careful person takes from them.
test.each(checkSheets(folder))('$file is read as a careful person reads it', ({ readings, differences }) => {
  expect(differences).toEqual([])
  expect(readings).toBeGreaterThan(50)
})

test('both plain sheets are there', () => {
  expect(checkSheets(folder).map(({ file }) => file)).toEqual([
    '01-plain-weekly.csv',
    '02-semicolon-decimal-comma-bom.csv',
  ])
})
