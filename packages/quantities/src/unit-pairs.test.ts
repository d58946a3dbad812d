import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  alkalinityIn,
  alkalinityUnits,
  convert,
  parseUnit,
  quantities,
  quantityNames,
  readingIn,
  readQuantity,
  sameDimension,
} from './index.ts'
import { unitNames } from './unit-names.ts'

const names = unitNames.map((name) => name.replace('_', ' '))
const units = new Map(names.map((name) => [name, parseUnit(name)]))

const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true })
const figure = fc.tuple(size, fc.constantFrom(1, -1)).map(([value, sign]) => sign * value)

/** Every two names, prefixes and all, that are of one dimension. */
const pairs = names.flatMap((from) =>
  names.flatMap((to) => {
    const [a, b] = [units.get(from), units.get(to)]
    return a !== undefined && b !== undefined && sameDimension(a, b) ? [[from, to] as const] : []
  }),
)

test('a figure comes back from every unit of its dimension', () => {
  expect(pairs.length).toBeGreaterThan(1500)
  fc.assert(
    fc.property(figure, (value) => {
      const off = pairs.filter(([from, to]) => {
        const back = convert(convert(value, from, to), to, from)
        // beside a zero of 273 K or of 460 °F a small figure keeps fewer digits
        const allowed = units.get(from)?.zero === undefined ? 1e-12 * Math.abs(value) : 1e-9
        return !(Math.abs(back - value) <= allowed)
      })
      expect(off).toEqual([])
    }),
    { numRuns: 30, seed: 11 },
  )
})

/** What units by the kilogram and light over a day leave open. */
const setting = { density: 1.0233, hoursPerDay: 10 }

test('a reading comes back from every unit and form of its quantity', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e4, noNaN: true }), (value) => {
      for (const name of quantityNames)
        for (const from of quantities[name].common)
          for (const to of quantities[name].common) {
            const read = readQuantity(name, `${value} ${from}`, setting)
            if (!read.ok) throw new Error(`${name}: ${from}: ${JSON.stringify(read)}`)
            const there = readingIn(name, read.value, to, setting)
            // salinities on two scales have the equations of sea water between them
            if (!there.ok && name === 'salinity') continue
            if (!there.ok || there.value.stated.is !== 'exact') throw new Error(`${name}: ${from} in ${to}`)
            const back = readQuantity(name, `${there.value.stated.value} ${to}`, setting)
            if (!back.ok || back.value.stated.is !== 'exact' || read.value.stated.is !== 'exact')
              throw new Error(`${name}: ${from} in ${to} and back`)
            const { value: once } = read.value.stated
            expect(Math.abs(back.value.stated.value - once), `${from}, ${to}`).toBeLessThan(
              1e-9 * Math.max(1, Math.abs(once)),
            )
          }
    }),
    { numRuns: 10, seed: 12 },
  )
})

test('alkalinity comes back through every two of its units', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 100, noNaN: true }), (value) => {
      for (const from of alkalinityUnits)
        for (const to of alkalinityUnits) {
          const shown = alkalinityIn(value, from, 1.0233)
          const there = readQuantity('alkalinity', `${shown} ${from}`, setting)
          if (!there.ok) throw new Error(from)
          const again = readingIn('alkalinity', there.value, to, setting)
          if (!again.ok || again.value.stated.is !== 'exact') throw new Error(to)
          expect(again.value.stated.value / alkalinityIn(value, to, 1.0233)).toBeCloseTo(1, 12)
        }
    }),
    { numRuns: 20, seed: 13 },
  )
})
