import { composeEntry, type JournalLine } from '@holdfast/logbook'
import { describe, expect, it, vi } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { chooseWays } from '../ways/ways.ts'
import { stateOf } from './state.ts'

const bands = [
  { quantity: 'nitrate', low: 1, high: 10 },
  { quantity: 'phosphate', low: 0.02, high: 0.1 },
] as const

const lineOf = (
  quantity: 'nitrate' | 'phosphate',
  value: number,
  at: string,
  said: {
    readonly text?: string
    readonly unit?: string
    readonly form?: string
    readonly kit?: string
  } = {},
): JournalLine => ({
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
        body: { quantity, value, belowDetection: false, text: String(value), typed: {}, ...said },
      },
      new Date(`${at}T12:00:00Z`),
    ),
    knownAt: `${at}T12:00:00Z`,
  } as JournalLine['entry'],
  state: 'holds',
  rivals: [],
  says: [quantity, said.text ?? value, said.unit, said.form, said.kit && `(${said.kit})`]
    .filter(Boolean)
    .join(' '),
})

const asked = { system: exampleData.system, bands, today: '2026-03-10' }

describe('the state of a system', () => {
  it('says when each was read and where it stands', () => {
    const { says } = stateOf({ ...asked, lines: [lineOf('nitrate', 12, '2026-03-08')] })
    expect(says[0]).toBe('nitrate 12, 2 days ago: above the 1 to 10 that reefs like this are kept in.')
  })

  it('says a reading in its own unit and in that of the band, and leaves the kit to the log', () => {
    const said = { text: '0.065', unit: 'mg/L', form: 'P', kit: 'photometer' }
    const { says } = stateOf({ ...asked, lines: [lineOf('phosphate', 0.2, '2026-03-08', said)] })
    expect(says[0]).toBe(
      'phosphate 0.065 mg/L P (0.2 mg/L PO4), 2 days ago: above the 0.02 to 0.1 mg/L PO4 that reefs like this are kept in.',
    )
  })

  it('is written with the decimal comma of a keeper who has it', () => {
    vi.stubGlobal('localStorage', { setItem: () => undefined })
    chooseWays({ decimal: 'comma' })
    const { says } = stateOf({ ...asked, lines: [lineOf('phosphate', 0.05, '2026-03-10')] })
    chooseWays({ decimal: 'point' })
    vi.unstubAllGlobals()
    expect(says[0]).toBe('phosphate 0,05, today: within the 0,02 to 0,1 that reefs like this are kept in.')
  })

  it('asks first for what was never read', () => {
    const { lacks } = stateOf({ ...asked, lines: [lineOf('nitrate', 5, '2026-01-01')] })
    expect(lacks[0]).toContain('Test phosphate first')
  })

  it('asks for what was read longest ago', () => {
    const lines = [lineOf('nitrate', 5, '2026-03-09'), lineOf('phosphate', 0.05, '2026-02-01')]
    expect(stateOf({ ...asked, lines }).lacks[0]).toBe('Test phosphate: the last reading was 37 days ago.')
  })

  it('asks for both where both are old, and for both first where neither was read', () => {
    const lines = [lineOf('nitrate', 5, '2026-02-20'), lineOf('phosphate', 0.05, '2026-02-20')]
    expect(stateOf({ ...asked, lines }).lacks[0]).toBe(
      'Test nitrate and phosphate: the last reading was 18 days ago.',
    )
    expect(stateOf({ ...asked, lines: [] }).lacks[0]).toContain('Test nitrate and phosphate first')
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
