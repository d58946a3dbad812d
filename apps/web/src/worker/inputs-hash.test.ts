import { describe, expect, it } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { questionOf } from '../water/question.ts'
import { inputsHash } from './inputs-hash.ts'

const outlook = questionOf(exampleData)

describe('the hash of inputs', () => {
  it('is one for equal inputs, in whatever order their keys are written and however many members work', () => {
    const turned = Object.fromEntries(Object.entries(outlook).reverse()) as unknown as typeof outlook
    const hash = inputsHash({ kind: 'outlook', outlook })
    expect(hash).toMatch(/^[0-9a-f]{16}$/)
    expect(inputsHash({ kind: 'outlook', outlook: { ...turned, members: 3 } })).toBe(hash)
  })

  it('is another for another lever, another reading, another span, an own value of a fact', () => {
    const [first, ...others] = outlook.observations
    if (!first) throw new Error('The example has no reading.')
    const span = { from: 20_390, to: 20_420 }
    const own = { fact: 'foam.k.tank', low: 1, typical: 2, high: 3, unit: 'd⁻¹', reason: 'measured' }
    const hashes = [
      inputsHash({ kind: 'outlook', outlook }),
      inputsHash({ kind: 'outlook', outlook: { ...outlook, ownFacts: [own] } }),
      inputsHash({
        kind: 'outlook',
        outlook: { ...outlook, levers: { waterChange: { volume_L: 31, every_days: 14 } } },
      }),
      inputsHash({
        kind: 'outlook',
        outlook: { ...outlook, observations: [{ ...first, value: first.value + 0.1 }, ...others] },
      }),
      inputsHash({ kind: 'ledger', outlook, span }),
      inputsHash({ kind: 'ledger', outlook, span: { ...span, from: 20_391 } }),
    ]
    expect(new Set(hashes).size).toBe(hashes.length)
  })
})
