import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { published } from './published.ts'
import { readExperiment } from './read-experiment.ts'
import { draws, runExperiment } from './run-experiment.ts'

const box = {
  vessels: [{ id: 'display', kind: 'display', water: '100 L' }],
  surfaces: [
    {
      id: 'glass',
      vessel: 'display',
      kind: 'glass',
      area: '1 m2',
      light: '0 umol/m2/s',
      hours: 0,
      age: '0 d',
    },
  ],
  temperature: '25 °C',
}

const diluted = {
  title: 'Dilution',
  source: 'arithmetic',
  conditions: 'A fifth of the water is changed five times.',
  assumed: 'nothing',
  days: 6,
  system: box,
  start: { nitrate: 100 },
  schedule: [{ day: 0.5, every: 1, until: 5, kind: 'water change', volume_L: 20 }],
  treatments: { changed: {}, twice: { start: { nitrate: 200 } } },
  measured: [
    {
      says: 'What is left',
      of: { read: 'concentration', of: ['water.nitrate/N'], unit: 'µmol L⁻¹', on: 6 },
      value: 32.768,
      provenance: 'arithmetic',
    },
    {
      says: 'Twice as much where twice as much was',
      of: { read: 'amount', in: 'twice', of: ['water.nitr*/N'], unit: 'µmol', on: 6 },
      over: { read: 'amount', of: ['water.nitr*/N'], unit: 'µmol', on: 6 },
      value: 2,
      provenance: 'arithmetic',
    },
    {
      says: 'What left, a day',
      of: { read: 'flow', atom: 'N', into: 'outside.discarded-water', unit: 'µmol d⁻¹', from: 0, to: 6 },
      value: (10_000 * (1 - 0.8 ** 5)) / 6,
      provenance: 'arithmetic',
    },
  ],
}

const issuesOf = (change: object): string => {
  const read = readExperiment(JSON.stringify({ ...diluted, ...change }))
  return read.ok ? '' : read.issues.join('\n')
}

test('five changes of a fifth leave 0.8 to the power of five, in every treatment', () => {
  const read = readExperiment(JSON.stringify(diluted))
  expect(read).toMatchObject({ ok: true })
  if (!read.ok) return
  const rows = runExperiment(read.experiment)
  expect(draws).toBeGreaterThan(40)
  for (const { low, high, measured } of rows) {
    expect(low / (measured.value ?? 0)).toBeCloseTo(1, 6)
    expect(high / (measured.value ?? 0)).toBeCloseTo(1, 6)
  }
})

test('an issue names the place, what stands there and what is accepted', () => {
  expect(issuesOf({ days: 'six' })).toMatch(/^days: "six" does not fit\. .*expected number/)
  expect(issuesOf({ weather: 1 })).toMatch(/weather/)
  expect(issuesOf({ system: { ...box, temperature: 'warm' } })).toMatch(/temperature.*warm/i)
  expect(issuesOf({ set: { 'coral.nothing': 1 } })).toMatch(/^set\.coral\.nothing: /)
  expect(issuesOf({ stocks: { 'water.gold/N': 1 } })).toMatch(/water\.gold\/N.*water\.nitrate\/N/)
})

test('a measurement of a day after the end, of an unknown treatment or account, or without a figure is refused', () => {
  const [first] = diluted.measured
  const withReading = (of: object): string =>
    issuesOf({ measured: [{ ...first, of: { ...first.of, ...of } }] })
  expect(withReading({ on: 9 })).toMatch(/day 9 is after day 6/)
  expect(withReading({ in: 'never' })).toMatch(/no treatment "never".*changed, twice/)
  expect(withReading({ of: ['water.gold/N'] })).toMatch(/no account "water\.gold\/N"/)
  expect(issuesOf({ measured: [{ ...first, value: undefined }] })).toMatch(/one of value, above, below/)
  expect(issuesOf({ measured: [{ ...first, low: 40 }] })).toMatch(/not in this order/)
})

test.each(published().map((file) => [file.split(/[\\/]/).at(-1), file]))(
  'the published experiment %s can be run',
  (_, file) => {
    expect(readExperiment(readFileSync(String(file), 'utf8'))).toMatchObject({ ok: true })
  },
)
