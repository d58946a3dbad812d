import { catalogueAlone, type FactsOfSystem, factsOfSystem } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { equationsOf } from '../simulate/equations-of.ts'
import type { Surface, System } from '../system.ts'
import { fittingCrew } from '../testing/fitting-crew.ts'
import { strewnNumbers } from '../testing/numbers.ts'
import { ordinaryReef } from '../testing/ordinary-reef.ts'
import { plate } from '../testing/systems.ts'
import type { Mouth } from './grazing.ts'
import { appetiteOf, grazingCapacity } from './grazing-capacity.ts'

/** Grams eaten in a day, mouth by mouth, in strewn states of a system at the typical facts. */
function eatenIn(system: System, seed: number) {
  const model = assemble(system)
  const { y } = strewnNumbers(model, seed)
  const parameters = typicalParameters(model)
  const out = new Float64Array(model.fluxes.length)
  equationsOf(model, parameters, model.settings.values).rates(y, out)
  const block = model.blocks.find(({ process }) => process.id === 'grazing')
  if (!block) throw new Error('Nobody grazes.')
  const state = (id: string): number =>
    y[model.states.findIndex((one) => one.kind === 'plain' && one.state.id === id)]
  return block.instances.map((instance, n) => {
    const mouth = instance as Mouth
    const { kind } = mouth.stand
    const content = parameters[model.parameters.findIndex(({ fact }) => fact === `algae.${kind}.tissue_C`)]
    const first = block.firstFlux + n * block.compiled.fluxes
    const carbon = Array.from({ length: block.compiled.fluxes }, (_, k) => first + k)
      .filter((k) => model.fluxes[k].atom === 'C')
      .reduce((sum, k) => sum + out[k], 0)
    return { mouth, living: state(`living.${mouth.taxon}`), eaten: carbon / content }
  })
}

const crewed = (number: number): System => {
  const reef = ordinaryReef(number)
  return { ...reef, animals: [...reef.animals, ...fittingCrew(reef, 'hair_green', number)] }
}

describe.each([1, 4, 7, 12, 17])('the crew of ordinary reef %i', (number) => {
  const system = crewed(number)
  const seeds = [1, 2, 3].map((seed) => eatenIn(system, 100 * number + seed))

  test('eats of no stand more than a planner reckons with', () => {
    const beyond = seeds.flat().filter(({ mouth, living, eaten }) => {
      const place = { surface: mouth.surface, patch: mouth.stand.patch, kind: mouth.stand.kind }
      return eaten > living * grazingCapacity(mouth.taxon, place, system, catalogueAlone) * (1 + 1e-9)
    })
    expect(seeds.flat().filter(({ eaten }) => eaten > 0).length).toBeGreaterThan(50)
    expect(beyond.map(({ mouth }) => mouth.taxon)).toEqual([])
  })

  test('eats of all stands together no more than its appetite', () => {
    for (const rows of seeds) {
      for (const taxon of new Set(rows.map(({ mouth }) => mouth.taxon))) {
        const own = rows.filter(({ mouth }) => mouth.taxon === taxon)
        const together = own.reduce((sum, { eaten }) => sum + eaten, 0)
        expect(together).toBeLessThanOrEqual(
          own[0].living * appetiteOf(taxon, system, catalogueAlone) * (1 + 1e-9),
        )
      }
    }
  })
})

describe('what one animal can take', () => {
  const best = { temperature_C: 25 }
  const at = (surface: Surface, patch: 'open' | 'hidden' = 'open', kind = 'hair_green') =>
    grazingCapacity('Trochus histrio', { surface, patch, kind }, best, catalogueAlone)

  test('is its taste times its appetite', () => {
    expect(at(plate)).toBeCloseTo(0.65 * 0.0416, 12)
  })

  test('is nothing behind a comb that it does not pass, on a patch that it does not reach, of a kind it refuses', () => {
    expect(at({ ...plate, enclosed: true, opening_mm: 5 })).toBe(0)
    expect(at(plate, 'hidden')).toBe(0)
    expect(
      grazingCapacity(
        'Conomurex luhuanus',
        { surface: plate, patch: 'open', kind: 'bubble' },
        best,
        catalogueAlone,
      ),
    ).toBe(0)
  })

  test('is less in the cold, and follows the keeper who knows better', () => {
    const place = { surface: plate, patch: 'open', kind: 'hair_green' } as const
    const taken = (temperature_C: number, facts: FactsOfSystem) =>
      grazingCapacity('Trochus histrio', place, { temperature_C }, facts)
    expect(taken(15, catalogueAlone)).toBeCloseTo(taken(25, catalogueAlone) / 2, 12)
    const own = factsOfSystem([
      {
        fact: 'grazer.trochus_histrio.consumption',
        low: 0.1,
        typical: 0.2,
        high: 0.3,
        unit: 'g d⁻¹',
        reason: 'weighed',
      },
    ])
    expect(taken(25, own)).toBeCloseTo(0.65 * 0.2, 12)
  })
})
