import { catalogueAlone, fact, sources } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { describe, expect, test } from 'vitest'
import { generateKernel } from '../../build/generate.ts'
import { plainRates } from '../../build/plain-rates.ts'
import { assemble } from '../assemble/assemble.ts'
import type { Flux } from '../assemble/model.ts'
import { chosen, layoutOf, type Process } from '../declare/index.ts'
import { events } from '../events/index.ts'
import { formRules } from '../forms/rules.ts'
import { processes } from '../processes/index.ts'
import { equationsOf } from '../simulate/equations-of.ts'
import { compiledAmounts } from '../testing/compiled-amounts.ts'
import { strewnNumbers } from '../testing/numbers.ts'
import { reef } from '../testing/systems.ts'

/** One suite that every process and every event of the lists passes; a new member is in it by being in its list. */
const declarations = [...processes, ...events]
const model = assemble(reef)
const knownSources = new Set(['mass balance', ...sources().map(({ key }) => key)])
const seeds = [1, 2, 3, 4, 5]

const fluxesOf = (declaration: Process): readonly (Flux & { readonly index: number })[] =>
  (declaration.event ? model.eventFluxes : model.fluxes)
    .map((flux, index) => ({ ...flux, index }))
    .filter(({ process }) => process.id === declaration.id)

/** Rates (or amounts) by the generated kernel. */
function byKernel(declaration: Process, numbers: ReturnType<typeof strewnNumbers>): Float64Array {
  if (declaration.event) return compiledAmounts(model, declaration.id, numbers)
  const out = new Float64Array(model.fluxes.length)
  equationsOf(model, numbers.parameters, numbers.settings).rates(numbers.y, out)
  return out
}

test('no two declarations share an id', () => {
  const ids = declarations.map(({ id }) => id)
  expect(ids.filter((id, k) => ids.indexOf(id) !== k)).toEqual([])
})

test('the sources of all forms are in the list of sources', () => {
  const named = Object.values(formRules).map(({ source }) => source)
  expect(named.filter((key) => key !== 'arithmetic' && !knownSources.has(key))).toEqual([])
})

describe.each(declarations.map((declaration) => [declaration.id, declaration] as const))(
  '%s',
  (_, declaration) => {
    test('has a title, a sentence for people and a source of the list', () => {
      expect(declaration.title).not.toBe('')
      expect(declaration.says).toMatch(/\.$/)
      expect([...knownSources]).toContain(declaration.source)
    })

    test('uses every name it declares and declares every name it uses', () => {
      expect(() => generateKernel([declaration])).not.toThrow()
    })

    test('reads facts that exist, in a unit they convert to', () => {
      for (const { of } of declaration.each(reef, catalogueAlone))
        for (const parameter of Object.values(declaration.parameters)) {
          const { low, typical, high, unit } = fact(chosen(parameter.fact, of))
          for (const value of [low, typical, high])
            expect(Number.isFinite(convert(value, unit, parameter.unit))).toBe(true)
        }
    })

    test('takes from one account what it gives to another, of the same atom', () => {
      const fluxes = fluxesOf(declaration)
      expect(fluxes.length).toBe(
        declaration.each(reef, catalogueAlone).length * layoutOf(declaration).fluxes.length,
      )
      for (const { atom, from, to } of fluxes) {
        if (atom === null) {
          if (to >= 0) expect(model.states[to].kind).toBe('plain')
          continue
        }
        const ends = [model.states[from], model.states[to]]
        expect(ends.map((end) => end.kind === 'atoms' && end.atom)).toEqual([atom, atom])
      }
    })

    test('takes nothing from an inside account that is empty, and never flows backwards unless it says so', () => {
      for (const seed of seeds) {
        const numbers = strewnNumbers(model, seed)
        const full = byKernel(declaration, numbers)
        for (const { index, from, atom, bothWays } of fluxesOf(declaration)) {
          if (atom === null || bothWays) continue
          expect(full[index]).toBeGreaterThanOrEqual(0)
          const source = model.states[from]
          if (source.kind === 'plain' || source.account.side === 'outside') continue
          const y = Float64Array.from(numbers.y)
          y[from] = 0
          expect(byKernel(declaration, { ...numbers, y })[index]).toBe(0)
        }
      }
    })

    test('gives the same numbers by the generated kernel and by walking its formulas', () => {
      for (const seed of seeds) {
        const numbers = strewnNumbers(model, seed)
        const compiled = byKernel(declaration, numbers)
        const plain = new Float64Array(compiled.length)
        plainRates(model, declaration.event ? declaration.id : undefined)(numbers, plain)
        for (const { index } of fluxesOf(declaration)) {
          expect(Number.isFinite(plain[index])).toBe(true)
          expect(compiled[index]).toBe(plain[index])
        }
      }
    })
  },
)
