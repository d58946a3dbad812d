import { fact, facts } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { type FactsOptions, factsCommand } from './commands/facts.ts'

/** What the command prints. */
function run(words: readonly string[], options: FactsOptions = {}): string {
  let out = ''
  factsCommand(words, options, {
    out: (line) => {
      out += `${line}\n`
    },
    err: () => undefined,
    redraws: false,
    agrees: async () => undefined,
  })
  return out
}

test('a fact is found by a word of its id, with its band, unit, source and how it is known', () => {
  const line = run(['foam'])
    .split('\n')
    .find((row) => row.startsWith('foam.k.tank '))
  const { low, typical, high } = fact('foam.k.tank')
  for (const text of [`${low}`, `${typical}`, `${high}`, 'd⁻¹', 'memory', 'Feldman'])
    expect(line).toContain(text)
})

test('a fact that is found alone is told in full: conditions, how it is known, references, what reads it', () => {
  const { title, holds, aside } = fact('fish.tan_rule')
  const told = run(['fish.tan_rule'])
  for (const text of [title, 'Fish, fish.tan_rule', `Holds for: ${holds}.`, 'Recalled', 'Timmons & Ebeling'])
    expect(told).toContain(text)
  expect(told).toContain(`No formula reads it: ${aside}.`)
  expect(run(['coral.ks_po4'])).not.toContain('No formula reads it')
})

test('an id asks for its own fact, whoever else names it', () => {
  expect(fact('den.ks_sand').aside).toContain('den.ks')
  expect(run(['den.ks']).split('\n')[0]).toBe(fact('den.ks').title)
})

test('every word must be found, in title, conditions or source, whatever their case', () => {
  const few = run(['ULVA', 'ammonium']).trim().split('\n').length
  expect(few).toBeGreaterThan(1)
  expect(few).toBeLessThan(run(['ulva']).trim().split('\n').length)
})

test('without a word all facts are listed', () => {
  expect(run([]).trim().split('\n').length).toBe(facts().length + 1)
})

test('a program gets the facts with their source as it is listed', () => {
  const found = JSON.parse(run(['coral.np'], { json: true }))
  expect(found).toEqual([
    expect.objectContaining({ id: 'coral.np', source: expect.objectContaining({ year: 1994 }) }),
  ])
})

test('the weakest are estimates', () => {
  const found = JSON.parse(run([], { weakest: 12, json: true }))
  expect(found.length).toBe(12)
  expect(new Set(found.map((one: { provenance: string }) => one.provenance))).toEqual(new Set(['estimate']))
})

test('words that no fact holds are said with what may be asked', () => {
  expect(() => run(['unobtainium'])).toThrow(/unobtainium/)
})
