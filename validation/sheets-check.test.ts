import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

import { checkSheets, sheetReport } from './sheets-check.ts'

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

test('the report counts the sheets, and a truth that is doctored turns it red', () => {
  expect(sheetReport(folder)).toEqual({ lines: ['2 passed, 0 failed'], exitCode: 0 })
  const doctored = mkdtempSync(join(tmpdir(), 'sheets-'))
  try {
    expect(sheetReport(doctored)).toEqual({ lines: ['0 passed, 0 failed'], exitCode: 1 })
    cpSync(folder, doctored, { recursive: true })
    const truth = join(doctored, '01-plain-weekly.truth.json')
    writeFileSync(truth, readFileSync(truth, 'utf8').replace('"value": 5.5', '"value": 55'))
    const { lines, exitCode } = sheetReport(doctored)
    expect(exitCode).toBe(1)
    expect(lines[0]).toContain('01-plain-weekly.csv')
    expect(lines.at(-1)).toBe('1 passed, 1 failed')
  } finally {
    rmSync(doctored, { recursive: true })
  }
})
