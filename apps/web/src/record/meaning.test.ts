import { draftEntry } from '@holdfast/logbook'
import { describe, expect, it } from 'vitest'
import { meaning, meaningInList } from './meaning.ts'

function read(quantity: string, value: string) {
  const draft = draftEntry('reading', { quantity, value })
  if (!draft.ok) throw new Error(JSON.stringify(draft))
  return { kind: 'reading', body: draft.body } as const
}

describe('what a reading comes to', () => {
  it('is said beside nitrogen, so that nobody takes it for the ion', () => {
    // 62.005 g of NO3 hold 14.007 g of N: closed form from atomic masses.
    expect(meaningInList(read('nitrate', '1 mg/L NO3-N'))).toBe('4.43 mg/L NO3')
    expect(meaningInList(read('phosphate', '16 ppb P'))).toBe('0.0491 mg/L PO4')
    expect(meaningInList(read('phosphate', '<10 ppb P'))).toBe('under 0.0307 mg/L PO4')
    expect(meaningInList(read('nitrate', '1-2 mg/L NO3-N'))).toBe('4.43 to 8.85 mg/L NO3')
  })

  it('is not said again where it was given so', () => {
    expect(meaning(read('nitrate', '5 mg/L NO3'))).toBeUndefined()
    expect(meaning(read('pH', '8.1'))).toBeUndefined()
    expect(meaning({ kind: 'note', body: { text: 'clear' } })).toBeUndefined()
  })

  it('is told of the others in full, and left out of a list', () => {
    // 1 meq/L is 2.804 dKH.
    expect(meaning(read('alkalinity', '8 dKH'))).toBe('2.85 meq/L')
    expect(meaningInList(read('alkalinity', '8 dKH'))).toBeUndefined()
  })
})
