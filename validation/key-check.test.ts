import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkKey } from './key-check.ts'

const own = readFileSync(new URL('./key/vignettes.csv', import.meta.url), 'utf8')
// Asked once, for the keepers of all vignettes are asked through.
const ours = checkKey(own)
const header = 'id,description,traits,expected_kind'
const row = (id: string, traits: string, kind: string) =>
  `${id},as told,"${traits.replaceAll('"', '""')}",${kind}`
const bubble = row('V1', '{"form":"ball","squeeze":"pops_with_fluid"}', 'bubble')

test('of our vignettes nine in ten have the true kind first, and all have it in the first three', () => {
  const { exitCode, passed, failed, lines } = ours
  expect([passed, failed, exitCode]).toEqual([89, 4, 0])
  expect(lines).toContain('First: 89 of 93 (95.7 %); in the first three: 93 of 93 (100.0 %).')
  expect(lines.filter((line) => line.includes('OUTSIDE'))).toEqual([])
})

test('a keeper who answers from our vignettes comes to an end in four questions or fewer', () => {
  const [told] = ours.lines.filter((line) => line.startsWith('Questions to an end'))
  const [answered, put] = (told ?? '').match(/\d+(\.\d+)?/g)?.map(Number) ?? []
  expect(answered).toBeGreaterThan(0)
  expect(put).toBeLessThanOrEqual(4)
})

test('a miss is told with rank, chance and what stands first', () => {
  const { lines, exitCode } = checkKey(`${header}\n${row('V1', '{"form":"ball"}', 'coralline')}\n`)
  expect(lines[0]).toMatch(/^MISS V1: coralline, rank \d+, 0\.\d{3}; first bubble, 0\.\d{3}$/)
  expect(exitCode).toBe(1)
})

test('a true kind that stands first passes', () => {
  const { lines, exitCode } = checkKey(`\uFEFF${header}\r\n${bubble}\r\n`)
  expect(lines[0]).toMatch(/^V1: bubble, rank 1, /)
  expect(lines.at(-1)).toBe('1 passed, 0 failed')
  expect(exitCode).toBe(0)
})

test('a row that cannot be read fails, with every issue of it, and the others are weighed', () => {
  const wrong = row('V2', '{"form":"blob","taste":"salt"}', 'kraken')
  const { lines, exitCode } = checkKey(`${header}\n${bubble}\n${wrong}\n`)
  expect(lines[0]).toMatch(
    /^V2: form: "blob" is not known\..*Traits: "taste" is not known\..*expected_kind: "kraken" is not known\./,
  )
  expect(lines.at(-1)).toBe('1 passed, 1 failed')
  expect(exitCode).toBe(1)
})

test('traits that are no JSON object are refused with an example', () => {
  const { lines } = checkKey(`${header}\n${row('V3', 'brown slime', 'dino')}\n`)
  expect(lines[0]).toContain('Give an object such as {"colour": "brown"')
})

test.each([
  ['', 'The file has no column "id". It needs id, description, traits, expected_kind.'],
  ['id,traits,expected_kind\nV1,{},dino\n', 'The file has no column "description".'],
  [`${header}\n`, 'The file holds no vignette.'],
])('a file that is none says what it needs', (text, says) => {
  const { lines, exitCode } = checkKey(text)
  expect(lines.join('\n')).toContain(says)
  expect(exitCode).toBe(1)
})
