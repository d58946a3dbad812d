import { describe, expect, it } from 'vitest'
import { exampleFact } from '../fixtures/example-ledger.ts'
import { derivationText } from './as-text.ts'
import type { ComputedFigure, Derivation } from './computed.ts'

const derivation: Derivation = {
  says: 'Summed in 60 simulated tanks.',
  steps: [
    { formula: 'mass = amount * molar mass', withValues: '14 mg N = 1000 µmol N * 14.007 g/mol / 1000' },
  ],
  facts: [],
  processes: [
    {
      process: 'foam',
      instance: 'skimmer',
      title: 'Foam fractionation',
      says: 'Foam takes what clings to bubbles.',
      formulas: [{ formula: 'N = removal * skimmable', withValues: 'N = 0.8 * skimmable' }],
      facts: [exampleFact],
      accounts: [],
    },
  ],
  entries: ['a', 'b', 'c'],
}

const figure: ComputedFigure = {
  id: 'stream.N.outside.skimmate',
  name: 'Skimmate',
  value: 14,
  low: 9.2,
  high: 21,
  unit: 'mg N',
  derivation: () => derivation,
}

describe('a derivation that is copied', () => {
  const entries = [{ id: 'c', at: '2026-03-01T08:10+01:00[Europe/Berlin]', text: 'Nitrate 5 mg/L' }]
  const text = derivationText(figure, derivation, entries, '2 March 2026')

  it('says what it is with unit and interval first, and when it was worked out last', () => {
    const lines = text.split('\n')
    expect(lines[0]).toBe('Skimmate: 14 (9 to 21) mg N')
    expect(lines.at(-1)).toBe('Worked out by Holdfast on 2 March 2026.')
  })

  it('carries the formula with values, the facts with source and provenance, and the entries with their day', () => {
    expect(text).toContain('14 mg N = 1000 µmol N × 14.007 g/mol ÷ 1000')
    expect(text).toContain('N = 0.8 × skimmable')
    expect(text).toContain('0.8 (0.2 to 3) d⁻¹. hand-made for this example; our estimate.')
    expect(text).toContain('- 1 Mar 2026, 08:10: Nitrate 5 mg/L\n- and 2 earlier')
  })
})
