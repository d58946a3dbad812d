import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

import { kindNamed, kinds } from './index.ts'
import { kind, type OldBody } from './kind.ts'
import { lift, readEntry } from './read-entry.ts'
import { z } from './schema.ts'

const samples = new URL('./samples/', import.meta.url)
const sample = (name: string): Record<string, unknown> =>
  JSON.parse(readFileSync(new URL(name, samples), 'utf8'))

test('every version of every kind has one stored sample, and nothing else lies there', () => {
  const expected = kinds.flatMap(({ name, v }) =>
    Array.from({ length: v }, (_, n) => `${name}.v${n + 1}.json`),
  )
  expect(readdirSync(samples).sort()).toEqual(expected.sort())
})

test.each(readdirSync(samples))(
  'the stored sample %s is still read, word for word but for its lift',
  (name) => {
    const stored = sample(name)
    const read = readEntry(stored)
    if (!read.ok) throw new Error(JSON.stringify(read.issues))
    const newest = kindNamed(read.entry.kind)
    expect({ ...read.entry, v: stored.v, body: stored.body }).toEqual(stored)
    expect(read.entry.body).toEqual(lift(newest, Number(stored.v), stored.body as OldBody))
    expect(read.entry.v).toBe(newest.v)
  },
)

test('animals lost of which nobody wrote how are missing, neither dead nor taken out', () => {
  const read = readEntry(sample('animals.v1.json'))
  expect(read).toMatchObject({ ok: true, entry: { v: 2, body: { change: 'missing', count: 3 } } })
})

test('an entry of an older version is lifted when read, step by step', () => {
  const grown = kind({
    name: 'note',
    title: 'Note',
    v: 3,
    body: { words: z.string(), lines: z.number() },
    says: ({ words }) => words,
    lifts: {
      1: ({ text, ...rest }) => ({ ...rest, words: text }),
      2: (body) => ({ ...body, lines: String(body.words).split('\n').length }),
    },
  })
  const read = readEntry({ ...sample('note.v1.json'), body: { text: 'one\ntwo' } }, [grown])
  expect(read).toMatchObject({ ok: true, entry: { v: 3, body: { words: 'one\ntwo', lines: 2 } } })
})

test('fields that a newer program wrote are kept', () => {
  const newer = { ...sample('note.v1.json'), mood: 'good', body: { text: 'calm', colour: 'blue' } }
  expect(readEntry(newer)).toEqual({ ok: true, entry: newer })
})

test('an unknown kind, a newer version and a wrong body are refused with the reason', () => {
  const note = sample('note.v1.json')
  const codes = [{ ...note, kind: 'omen' }, { ...note, v: 2 }, { ...note, body: {} }, 'no entry'].map(
    (value) => {
      const read = readEntry(value)
      return read.ok ? 'read' : read.issues[0].code
    },
  )
  expect(codes).toEqual(['unknown-kind', 'newer-version', 'invalid_type', 'invalid_type'])
})

const moment = (at: string, precision: string): boolean =>
  readEntry({ ...sample('note.v1.json'), at, precision }).ok

test('an instant alone is no time of an entry: the zone belongs to it', () => {
  expect(moment('2026-03-01T08:10Z', 'minute')).toBe(false)
  expect(moment('2026-03-01T08:10+01:00[Europe/Berlin]', 'minute')).toBe(true)
})

test('a day that the calendar lacks, a zone that nobody knows and a precision that does not fit are refused', () => {
  expect(moment('2026-02-30', 'day')).toBe(false)
  expect(moment('2026-03-01T08:10+01:00[Mars/Base]', 'minute')).toBe(false)
  expect(moment('2026-03-01T24:10+01:00[Europe/Berlin]', 'minute')).toBe(false)
  expect(moment('2026-03-01', 'minute')).toBe(false)
  expect(moment('2026-03-01T08:10+01:00[Europe/Berlin]', 'day')).toBe(false)
})
