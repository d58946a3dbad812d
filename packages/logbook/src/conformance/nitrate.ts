import type { EntryOf } from '../entries/entry.ts'

/** An entry for tests: a reading of nitrate on a day. */
export function nitrate(number: number, changes: Partial<EntryOf<'reading'>> = {}): EntryOf<'reading'> {
  return {
    id: `018f3a1e-7c00-7000-8000-${String(number).padStart(12, '0')}`,
    workspace: 'home',
    system: 'reef',
    kind: 'reading',
    v: 1,
    at: '2026-01-04',
    precision: 'day',
    madeAt: '2026-01-04T19:12:08.201Z',
    by: 'keeper',
    device: 'telephone',
    body: {
      quantity: 'nitrate',
      value: number,
      belowDetection: false,
      text: String(number),
      unit: 'mg/L',
      form: 'NO3',
    },
    ...changes,
  }
}
