import { composeEntry, type JournalLine } from '@holdfast/logbook'
import { describe, expect, it } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { stateOf } from './state.ts'

const bands = [
  { quantity: 'nitrate', low: 1, high: 10 },
  { quantity: 'phosphate', low: 0.02, high: 0.1 },
] as const

const lineOf = (quantity: 'nitrate' | 'phosphate', value: number, at: string): JournalLine => ({
  entry: {
    ...composeEntry(
      {
        workspace: 'home',
        system: 'long-lagoon',
        kind: 'reading',
        at,
        precision: 'day',
        by: 'keeper',
        device: 'test',
        body: { quantity, value, belowDetection: false, text: String(value), typed: {} },
      },
      new Date(`${at}T12:00:00Z`),
    ),
    knownAt: `${at}T12:00:00Z`,
  } as JournalLine['entry'],
  state: 'holds',
  rivals: [],
  says: `${quantity} ${value}`,
})

const asked = { system: exampleData.system, bands, today: '2026-03-10' }

describe('the state of a system', () => {
  it('says when each was read and where it stands', () => {
    const { says } = stateOf({ ...asked, lines: [lineOf('nitrate', 12, '2026-03-08')] })
    expect(says[0]).toBe('nitrate 12, 2 days ago: above the 1 to 10 that reefs like this are kept in.')
  })

  it('asks first for what was never read', () => {
    const { lacks } = stateOf({ ...asked, lines: [lineOf('nitrate', 5, '2026-01-01')] })
    expect(lacks[0]).toContain('Test phosphate first')
  })

  it('asks for what was read longest ago', () => {
    const lines = [lineOf('nitrate', 5, '2026-03-09'), lineOf('phosphate', 0.05, '2026-02-01')]
    expect(stateOf({ ...asked, lines }).lacks[0]).toContain('Test phosphate: it was last read 37 days ago')
  })

  it('asks for no test in the fortnight after one', () => {
    const lines = [lineOf('nitrate', 5, '2026-03-09'), lineOf('phosphate', 0.05, '2026-03-01')]
    expect(stateOf({ ...asked, lines }).lacks.filter((one) => one.startsWith('Test'))).toEqual([])
  })

  it('leaves out what was taken back', () => {
    const lines = [{ ...lineOf('nitrate', 5, '2026-03-09'), state: 'taken back' as const }]
    expect(stateOf({ ...asked, lines }).says[0]).toContain('no reading')
  })
})
