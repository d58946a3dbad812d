import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { ask } from './ask.ts'
import type { CaseFile, Expected, Statement } from './case-file.ts'
import { withoutModel } from './model-answers.ts'
import { readCase } from './read-case.ts'
import { checkCases } from './run-cases.ts'

const system = {
  vessels: [{ id: 'display', kind: 'display', volume_L: 100 }],
  source_water: { kind: 'RO/DI', NO3_mg_L: 0, PO4_mg_L: 0 },
  salt_mix: { salinity_psu: 35, NO3_mg_L: 0, PO4_mg_L: 0 },
  salinity_psu: 35,
  temperature_C: 25,
  evaporation_L_per_day: 2,
  equipment: [{ kind: 'water change', volume_L: 10, every_days: 7, water: 'source water + salt' }],
}

const small = {
  id: 'small',
  title: 'A small tank',
  start: '2026-01-01',
  asof: '2026-01-31',
  system,
  log: { readings: [], events: [] },
}

const statement = (id: string, check: Statement['check'], expected: Expected): Statement => ({
  id,
  statement: `statement ${id}`,
  check,
  expected,
  strength: 'certain',
})

const passing = statement(
  'a',
  { quantity: 'fraction_replaced', n: 5, change_fraction: 0.2 },
  { range: [0.67, 0.68] },
)
const failing = statement('b', { quantity: 'fraction_replaced', n: 5, change_fraction: 0.2 }, { equals: 1 })
const skipped = statement('c', { quantity: 'measure_first' }, { one_of: ['feed_less'] })

function folderOf(files: Readonly<Record<string, unknown>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'cases-'))
  for (const [name, content] of Object.entries(files))
    writeFileSync(join(folder, name), typeof content === 'string' ? content : JSON.stringify(content))
  return folder
}

test('a folder with one statement of each outcome prints the failure, the skip by name, and the counts last', () => {
  const folder = folderOf({ 'small.json': { ...small, expert: [passing, failing, skipped] } })
  const { lines, exitCode } = checkCases(folder, withoutModel)
  expect(lines).toEqual([
    'FAILED  small b (certain): statement b',
    '        fraction_replaced: expected equals 1, got 0.6723',
    'skipped: 1 model',
    '1 passed, 1 failed, 1 skipped',
  ])
  expect(exitCode).toBe(1)
})

test('a folder in which all that can be asked holds ends well', () => {
  const folder = folderOf({ 'small.json': { ...small, expert: [passing, skipped] } })
  const { lines, exitCode } = checkCases(folder, withoutModel)
  expect(lines.at(-1)).toBe('1 passed, 0 failed, 1 skipped')
  expect(exitCode).toBe(0)
})

test('an empty folder, a missing one and one where nothing passed end badly', () => {
  expect(checkCases(folderOf({}), withoutModel)).toEqual({
    lines: ['0 passed, 0 failed, 0 skipped'],
    exitCode: 1,
  })
  const missing = checkCases(join(tmpdir(), 'no-such-folder'), withoutModel)
  expect(missing.lines[0]).toContain('cannot be read. Give a folder that holds cases as *.json.')
  expect(missing.exitCode).toBe(1)
  expect(checkCases(folderOf({ 'small.json': { ...small, expert: [skipped] } }), withoutModel).exitCode).toBe(
    1,
  )
})

test('a key that is not known is reported by its place, and the case is still asked', () => {
  const equipment = [{ kind: 'skimmer', rated_for_L: 200, colour: 'blue' }]
  const events = [{ date: '2026-01-05', kind: 'top-off', volume_L: 3, temperature: 20 }]
  const file = {
    ...small,
    system: { ...system, equipment },
    log: { readings: [], events },
    expert: [passing],
  }
  const { lines, exitCode } = checkCases(folderOf({ 'small.json': file }), withoutModel)
  expect(lines[0]).toContain('system.equipment[0] (skimmer).colour is a key that is not known ("blue")')
  expect(lines[1]).toContain('log.events[0] (top-off).temperature is a key that is not known (20)')
  expect(lines.at(-1)).toBe('1 passed, 0 failed, 0 skipped')
  expect(exitCode).toBe(0)
})

test('everything that is wrong with a file is said at once, and it counts as failed', () => {
  const broken = {
    ...small,
    asof: '31.1.2026',
    system: { ...system, temperature_C: 'warm', equipment: [{ kind: 'skimmer-o-matic' }] },
    expert: [passing],
  }
  const top = checkCases(folderOf({ 'broken.json': broken }), withoutModel)
  expect(top.lines[0]).toContain('case.asof is "31.1.2026". Accepted: date.')
  expect(top.lines.at(-1)).toBe('0 passed, 1 failed, 0 skipped')
  const inside = checkCases(folderOf({ 'broken.json': { ...broken, asof: '2026-01-31' } }), withoutModel)
  expect(inside.lines.slice(0, 2).join('\n')).toMatch(/temperature_C is "warm"[\s\S]*skimmer-o-matic/)
  expect(checkCases(folderOf({ 'broken.json': '{' }), withoutModel).exitCode).toBe(1)
})

test('a check with a key that its quantity does not read is answered and the key is named', () => {
  const odd = { ...passing, check: { ...passing.check, phase: 'full moon' } }
  const { lines } = checkCases(folderOf({ 'small.json': { ...small, expert: [odd] } }), withoutModel)
  expect(lines[0]).toBe('note  small a: fraction_replaced does not read the key "phase" of its check.')
})

test('a quantity that does not exist fails and is not passed over', () => {
  const unknown = statement('a', { quantity: 'happiness_of_fish' }, { equals: 1 })
  const { lines, exitCode } = checkCases(
    folderOf({ 'small.json': { ...small, expert: [unknown] } }),
    withoutModel,
  )
  expect(lines[1]).toContain('no quantity is called "happiness_of_fish"')
  expect(exitCode).toBe(1)
})

const ownFolder = join(import.meta.dirname, 'cases')
const ownCases = readdirSync(ownFolder).map((name) => {
  const read = readCase(readFileSync(join(ownFolder, name), 'utf8'))
  if (!read.read) throw new Error(`${name} is not a case`)
  return read.case
})

/** What is said of each case that holds without the model. */
const holding = ownCases.flatMap((file) =>
  file.expert
    .filter((one) => ask(file, one, withoutModel).result === 'passed')
    .map((one) => ({ file, one, name: `${file.id} ${one.id}` })),
)

test('the ten cases hold and nothing in them is unknown', () => {
  expect(ownCases).toHaveLength(10)
  expect(holding.length).toBeGreaterThan(15)
  expect(checkCases(ownFolder, withoutModel).lines.filter((line) => /^(FAILED|note)/.test(line))).toEqual([])
})

/** An expectation that is surely another. */
function doctored(expected: Expected): Expected {
  const { equals, one_of, range, includes } = expected
  if (range) return { range: [range[1] + 1, range[1] + 2] }
  if (typeof equals === 'boolean') return { equals: !equals }
  if (typeof equals === 'number') return { equals: equals + 1 }
  if (equals !== undefined) return { equals: 'something else' }
  if (includes) return { excludes: includes }
  return { one_of: (one_of ?? []).map((one) => `not ${one}`) }
}

test.each(holding)('$name fails when the expert says something else', ({ file, one }) => {
  expect(ask(file, { ...one, expected: doctored(one.expected) }, withoutModel).result).toBe('failed')
})

const scaled = (value: unknown, factor: number, keys: readonly string[]): unknown =>
  Array.isArray(value)
    ? value.map((item) => scaled(item, factor, keys))
    : typeof value === 'object' && value !== null
      ? Object.fromEntries(
          Object.entries(value).map(([key, held]) => [
            key,
            keys.includes(key) && typeof held === 'number' ? held * factor : scaled(held, factor, keys),
          ]),
        )
      : value

// One number of the system or the log is changed; the expert's sum no longer holds.
test.each([
  ['02-overfed-large-tank', 'd', 5, ['g_per_day']],
  ['05-carbon-dosing-phosphate-limited', 'c', 4, ['value']],
  ['05-carbon-dosing-phosphate-limited', 'e', 4, ['g_per_day']],
  ['06-refugium-without-light', 'c', 4, ['wet_g']],
  ['06-refugium-without-light', 'e', 4, ['wet_mass_g']],
  ['10-cycling-with-ammonium-chloride', 'a', 1.1, ['volume_L']],
  ['10-cycling-with-ammonium-chloride', 'd', 2, ['mass_g']],
  ['01-tap-topped-small-tank', 'i', 0, ['alkalinity_meq_L']],
])('%s %s turns red when %d times as much stands in the file', (id, statementId, factor, keys) => {
  const file = ownCases.find((one) => one.id === id)
  const one = file?.expert.find((each) => each.id === statementId)
  if (file === undefined || one === undefined) throw new Error(`${id} ${statementId} is not there`)
  const changed = scaled(file, factor, keys) as CaseFile
  expect(ask(file, one, withoutModel).result).toBe('passed')
  expect(ask(changed, one, withoutModel).result).toBe('failed')
})
