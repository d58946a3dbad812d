import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

import { checkImports, importReport } from './imports-check.ts'

const folder = fileURLToPath(new URL('./spreadsheets', import.meta.url))

// Invented sheets with what a careful person takes from them.
const checks = [...checkImports(folder), ...checkImports(join(folder, 'more'))]
test.each(checks)('$file is read as a careful person reads it', ({ readings, differences }) => {
  expect(differences).toEqual([])
  expect(readings).toBeGreaterThan(10)
})

test('all sheets are there', () => {
  expect(checks).toHaveLength(32)
})

test('the report counts the sheets, and a truth that is doctored turns it red', () => {
  expect(importReport(folder)).toEqual({ lines: ['12 passed, 0 failed'], exitCode: 0 })
  const doctored = mkdtempSync(join(tmpdir(), 'sheets-'))
  try {
    expect(importReport(doctored)).toEqual({ lines: ['0 passed, 0 failed'], exitCode: 1 })
    for (const end of ['csv', 'truth.json']) {
      cpSync(join(folder, `01-plain-weekly.${end}`), join(doctored, `01-plain-weekly.${end}`))
    }
    expect(importReport(doctored)).toEqual({ lines: ['1 passed, 0 failed'], exitCode: 0 })
    const truth = join(doctored, '01-plain-weekly.truth.json')
    const plain = readFileSync(truth, 'utf8')
    // each of these must be seen: a value, a date, a unit, a flag, a question, an odd cell
    const slips: readonly (readonly [string | RegExp, string])[] = [
      ['"value": 5.5', '"value": 55'],
      ['"date": "2026-01-04"', '"date": "2026-04-01"'],
      ['"unit_as_written": "dKH"', '"unit_as_written": "meq/L"'],
      ['"below_detection": true', '"below_detection": false'],
      [
        /"ambiguous": \[\s*\]/,
        '"ambiguous": [{"id": "x", "where": "column B", "question": "as NO3 or as N?", "options": ["NO3", "N"], "assumed": "NO3"}]',
      ],
      [/"odd_cells": \[\s*\]/, '"odd_cells": [{"cell": "B2", "as_written": "5.5", "why": "", "expect": ""}]'],
    ]
    for (const [from, to] of slips) {
      writeFileSync(truth, plain.replace(from, to))
      const { lines, exitCode } = importReport(doctored)
      expect([to, exitCode, lines.at(-1)]).toEqual([to, 1, '0 passed, 1 failed'])
      expect(lines[0]).toContain('01-plain-weekly.csv')
    }
  } finally {
    rmSync(doctored, { recursive: true })
  }
})
