import { assemble } from '@holdfast/ecosystem'
import { describe, expect, it } from 'vitest'
import { exampleData } from '../fixtures/example-system.ts'
import { accountTitles, explanationsOf } from './explanations.ts'
import { wantedBands } from './wanted-band.ts'

const model = assemble(exampleData.system)
const explanations = explanationsOf(model)

describe('the explanation of a process', () => {
  it('shows the declared formula, and the same with settings and typical facts put in', () => {
    const foam = explanations.find(({ process }) => process === 'foam-fractionation')
    // The skimmer is rated for 300 L and the system holds 300 L: strength 1.
    expect(foam?.formulas).toEqual([
      {
        formula: 'moved per day = removal × strength × running × factor',
        withValues: `moved per day = ${foam?.facts[0]?.typical} × 1 × 1 × 1`,
      },
    ])
  })

  it('gives every fact a source, a provenance and an order of low, typical, high', () => {
    const facts = explanations.flatMap((explanation) => explanation.facts)
    expect(facts.length).toBeGreaterThan(20)
    for (const fact of facts) {
      expect(fact.source, fact.id).not.toBe('')
      expect(['read', 'memory', 'common practice', 'estimate', 'as you gave it'], fact.id).toContain(
        fact.provenance,
      )
      expect(fact.low, fact.id).toBeLessThanOrEqual(fact.typical)
      expect(fact.typical, fact.id).toBeLessThanOrEqual(fact.high)
    }
  })

  it('is there for every flow that the model has', () => {
    const known = new Set(explanations.map(({ process, instance }) => `${process}/${instance}`))
    for (const flux of [...model.fluxes, ...model.eventFluxes]) {
      expect(known).toContain(`${flux.process.id}/${flux.instance}`)
    }
  })

  it('names every account for people', () => {
    expect(accountTitles(model)['water.nitrate']).toBe('Nitrate in the water')
  })
})

describe('where corals want it', () => {
  it('is the band of a mixed reef where no kind is named', () => {
    const [nitrate] = wantedBands(exampleData.system)
    expect(nitrate).toMatchObject({ quantity: 'nitrate', fact: { provenance: 'common practice' } })
    expect(nitrate?.low).toBeLessThan(nitrate?.high ?? 0)
  })
})
