import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { border } from '@holdfast/ecosystem'
import { ledgerOf } from '@holdfast/inference'
import { molarMass } from '@holdfast/quantities'
import { expect, test } from 'vitest'
import { noon } from './calendar.ts'
import type { CaseFile } from './case-file.ts'
import { inputSums } from './input-sums.ts'
import { questionOf } from './model/past-of-case.ts'
import { readCase } from './read-case.ts'

function caseNamed(name: string): CaseFile {
  const read = readCase(readFileSync(join(import.meta.dirname, 'cases', `${name}.json`), 'utf8'))
  if (!read.read) throw new Error(`${name} is not a case`)
  return read.case
}

const tap = caseNamed('01-tap-topped-small-tank')

// Arithmetic: (1.5 + 10/7) L/d x 40 mg/L NO3 / 4.427, 0.15 g x 7.2 %.
test('tap water at 40 mg/L brings 26.5 mg N a day beside 10.8 of the feed', () => {
  const sums = inputSums(tap, 'N', tap.start, tap.asof)
  expect(sums.source_water).toBeCloseTo(26.46, 2)
  expect(sums.feed).toBeCloseTo(10.8, 10)
  expect(sums.salt + sums.dose).toBe(0)
})

const withEvents: CaseFile = {
  ...tap,
  log: {
    ...tap.log,
    events: [
      { date: '2026-01-15', kind: 'feed change', g_per_day: 0.6 },
      { date: '2026-01-25', kind: 'feed change', g_per_day: 0.15 },
      { date: '2026-01-20', kind: 'dose', substance: 'potassium nitrate', mass_g: 1 },
      { date: '2026-01-12', kind: 'water change', volume_L: 20, water: 'RO/DI + salt' },
      { date: '2026-02-02', kind: 'water change', volume_L: 20 },
      { date: '2026-02-09', kind: 'water change', volume_L: 5 },
    ],
  },
}

test('ten days of fourfold ration, a dose and the changes that the log tells are what came in', () => {
  const sums = inputSums(withEvents, 'N', tap.start, tap.asof)
  // 32 days of 0.15 g and 10 of 0.6 g; 1.5 L x 42 d and 25 L of tap; 1 g of 13.85 % N.
  expect(sums.feed).toBeCloseTo(((32 * 0.15 + 10 * 0.6) * 72) / 42, 6)
  expect(sums.source_water).toBeCloseTo((((1.5 * 42 + 25) * 40) / 4.42664 / 42) * 1, 2)
  expect(sums.dose).toBeCloseTo(138.54 / 42, 2)
})

test.each([
  ['tap water and feed', tap],
  ['changed rations, a dose and three changes', withEvents],
  ['a dose alone', caseNamed('10-cycling-with-ammonium-chloride')],
])('the ledger of the model books what went in, to nine digits: %s', (_, file) => {
  const question = { ...questionOf(file), members: 2 }
  const { ledger } = ledgerOf(question, { from: noon(file.start), to: noon(file.asof) })
  for (const atom of ['N', 'P'] as const) {
    const { inputs } = border(ledger, atom)
    const sums = inputSums(file, atom, file.start, file.asof)
    for (const source of ['feed', 'source_water', 'salt', 'dose'] as const) {
      const booked = ((inputs.get(source) ?? 0) * molarMass(atom)) / 1000 / (ledger.to - ledger.from)
      expect(booked, `${atom} of ${source}`).toBeCloseTo(sums[source], 6)
    }
  }
})
