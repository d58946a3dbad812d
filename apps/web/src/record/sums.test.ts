import { waterQuantityNamed } from '@holdfast/seawater'
import { describe, expect, it } from 'vitest'
import { answerTo } from './sum.tsx'
import { sums } from './sums.ts'

const sumNamed = (id: string) => {
  const found = sums.find((sum) => sum.id === id)
  if (!found) throw new Error(`There is no sum ${id}.`)
  return found
}

describe('the sums of the page', () => {
  it.each(sums.map((sum) => [sum.asks, sum] as const))('%s has an answer from its starts', (_, sum) => {
    expect(waterQuantityNamed(sum.quantity)).toBeDefined()
    expect(answerTo(sum, {})).toMatch(/^-?[\d.]+ /)
    for (const { label } of sum.blanks) expect(label.length).toBeGreaterThan(2)
  })

  it('know the salinity of a specific gravity by both its temperatures', () => {
    // EOS-80: 1.026 is 34.5 at 25/25 °C and 38.5 at 25/4 °C (computed beside the check values of sea water).
    expect(answerTo(sumNamed('specific-gravity'), { SG: '1.026' })).toMatch(/^34\.5/)
    expect(answerTo(sumNamed('specific-gravity'), { SG: '1.026', t_ref: '4' })).toMatch(/^38\.5/)
  })

  it('leave a third after five changes of a fifth, by 0.8 to the fifth', () => {
    expect(answerTo(sumNamed('changes'), { value: '100' })).toMatch(/^32\.8? ?.*mg\/L$/)
  })

  it('say which blank cannot be read or taken', () => {
    expect(answerTo(sumNamed('oxygen'), { S: 'salty' })).toContain('Salinity: "salty" is no number')
    expect(answerTo(sumNamed('oxygen'), { S: '350' })).toContain('Salinity: 350 cannot be taken')
    expect(answerTo(sumNamed('oxygen'), { t: '25,5' })).toMatch(/^\d/)
  })
})
