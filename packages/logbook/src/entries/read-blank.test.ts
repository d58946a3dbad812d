import { expect, test } from 'vitest'

import type { Blank } from './blank.ts'
import { readBlank } from './read-blank.ts'

const read = (blank: Partial<Blank>, text: string): unknown => {
  const found = readBlank(
    { name: 'it', label: 'It', holds: 'words', required: true, hint: 'Such as this', ...blank },
    text,
  )
  if (found.ok) return found.value
  return 'question' in found ? found.question.options.map(({ value }) => value) : found.issues[0].code
}

test('words are kept but for the space around them, and end somewhere', () => {
  expect(read({}, '  calm, and clear ')).toBe('calm, and clear')
  expect(read({}, 'x'.repeat(20_001))).toBe('too-long')
})

test('a date is one that the calendar has, in the one order that cannot be mistaken', () => {
  expect(['2028-02-29', '2026-02-29', '3/4/26'].map((text) => read({ holds: 'date' }, text))).toEqual([
    '2028-02-29',
    'no-date',
    'no-date',
  ])
})

test('a count is whole and above 0, a number may have a comma', () => {
  expect(['3', '0', '2.5', 'three'].map((text) => read({ holds: 'count' }, text))).toEqual([
    3,
    'no-count',
    'no-count',
    'no-count',
  ])
  expect(['8,1', '-2', '1e3', '8.1.2', ''].map((text) => read({ holds: 'number' }, text))).toEqual([
    8.1,
    -2,
    1000,
    'not-a-number',
    'not-a-number',
  ])
})

test('bounds are held in the unit of the quantity, whatever unit was typed', () => {
  const hours = { holds: 'duration', unit: 'h', to: 1 } as const
  expect(['24', '25', '1440 min', '2 d'].map((text) => read(hours, text))).toEqual([
    1,
    'too-big',
    1,
    'too-big',
  ])
  const mass = { holds: 'mass', above: 0 } as const
  expect(['2 oz', '0 g'].map((text) => read(mass, text))).toEqual([expect.closeTo(56.699, 3), 'too-small'])
  expect(read({ holds: 'number', from: 0, to: 14 }, '14.1')).toBe('too-big')
})

test('where one number is wanted a limit or a span is none', () => {
  expect(['<40 L', '40-50 L', '~40 L'].map((text) => read({ holds: 'volume' }, text))).toEqual([
    'not-one-number',
    'not-one-number',
    40,
  ])
})

test('which gallon is asked, and the answer is what to type', () => {
  expect(read({ holds: 'volume' }, '10 gal')).toEqual(['10 US gal', '10 imp gal'])
})

test('a choice is taken by its value or its words, in capitals or not', () => {
  const choices = [{ value: 'taken out', words: 'taken out alive' }]
  const blank = { holds: 'choice', choices } as const
  expect(['taken out', 'Taken Out Alive', 'eaten'].map((text) => read(blank, text))).toEqual([
    'taken out',
    'taken out',
    'unknown-word',
  ])
  expect(read({ ...blank, open: true }, 'eaten')).toBe('eaten')
})
