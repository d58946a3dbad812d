import { describe, expect, test } from 'vitest'
import { layoutOf } from '../src/declare/index.ts'
import { events } from '../src/events/index.ts'
import { formRules } from '../src/forms/rules.ts'
import { processes } from '../src/processes/index.ts'
import { chance } from '../src/testing/chance.ts'
import { asExpression, differentiate } from './differentiate.ts'
import { evaluate } from './evaluate.ts'
import { partialOf } from './partials.ts'
import { type Value, valueGraph } from './value-graph.ts'

/** Points on both sides of every bend: arguments in the order in which the forms take them. */
const points: Readonly<Record<string, readonly (readonly number[])[]>> = {
  monod: [
    [3, 2],
    [-3, 2],
  ],
  droop: [
    [2, 1, 3],
    [0.5, 1, 3],
    [4, 1, 3],
  ],
  freundlich: [
    [0.6, 1.2, 0.4],
    [0.02, 1.2, 0.4],
  ],
  lightSaturation: [[120, 90]],
  selfShaded: [[150, 1.7]],
  throughCanopy: [[1.3], [-0.5]],
  filmCover: [[0.4, 2]],
  inhibited: [[0.7, 0.3]],
  fallingLine: [
    [5, 10, 30, 0.2],
    [20, 10, 30, 0.2],
    [40, 10, 30, 0.2],
  ],
  positive: [[2], [-2]],
  part: [
    [2, 5],
    [2, -5],
  ],
  least: [
    [1, 2],
    [2, 1],
  ],
  most: [
    [1, 2],
    [2, 1],
  ],
}
/** Temperature does not change with the states. */
const ofTemperature = ['q10', 'warmth']
/** Arguments that no formula gives a state to: derivatives by them are not known. */
const fixed: Readonly<Record<string, readonly number[]>> = {
  droop: [1, 2],
  freundlich: [1, 2],
  lightSaturation: [1],
  fallingLine: [1, 2, 3],
}

const numberOf = (value: number) => ({ type: 'number', value }) as const
const form = (name: string, given: readonly number[]) =>
  evaluate({ type: 'form', form: name, arguments: given.map(numberOf) }, () => Number.NaN)

/** By differences to both sides. */
function difference(of: (x: number) => number, at: number): number {
  const step = 1e-6 * Math.max(1e-3, Math.abs(at))
  return (of(at + step) - of(at - step)) / (2 * step)
}

test('every form has points to be differentiated at, or is of temperature alone', () => {
  expect([...Object.keys(points), ...ofTemperature].sort()).toEqual(Object.keys(formRules).sort())
})

test.each(Object.entries(points))('%s changes by its derivative', (name, all) => {
  for (const given of all)
    given.forEach((at, k) => {
      const ask = () => partialOf(name, k, numberOf(form(name, given)), given.map(numberOf))
      if (fixed[name]?.includes(k)) expect(ask).toThrow('has no derivative')
      else
        expect(evaluate(ask(), () => Number.NaN)).toBeCloseTo(
          difference((x) => form(name, given.with(k, x)), at),
          6,
        )
    })
})

describe.each([...processes, ...events].map((declaration) => [declaration.id, declaration] as const))(
  '%s',
  (_, declaration) => {
    const layout = layoutOf(declaration)
    const { values, fluxes, gathers } = valueGraph(layout)
    const derivatives = differentiate(values)

    /** All values for some inputs, and all derivatives there. */
    const worked = (inputs: readonly number[]) => {
      const known = new Map<string, number>()
      const look = (name: string): number => known.get(name) ?? Number.NaN
      for (const value of values) known.set(value.name, evaluate(formulaOf(value, inputs), look))
      for (const { name, is } of derivatives.steps) known.set(name, evaluate(is, look))
      return look
    }

    test('every flow and sum changes with every input as its derivative says', () => {
      const draw = chance(7)
      const inputs = layout.inputs.map(() => 0.2 + 2 * draw())
      const look = worked(inputs)
      for (const root of [...fluxes, ...gathers])
        for (const [k] of layout.inputs.entries()) {
          const is = derivatives.of(root, k)
          const live = derivatives.inputs(root).includes(k)
          expect(is !== undefined).toBe(live)
          if (!is) continue
          const exact = evaluate(is, look)
          const found = difference((x) => worked(inputs.with(k, x))(root.name), inputs[k])
          expect(Math.abs(exact - found)).toBeLessThanOrEqual(1e-5 * Math.abs(exact) + 1e-6)
        }
    })
  },
)

function formulaOf(value: Value, inputs: readonly number[]) {
  const given = value.of.map(asExpression)
  switch (value.type) {
    case 'number':
      return numberOf(value.number)
    case 'found':
      return numberOf(value.found === 'volume' ? 1.7 : inputs[value.found.input])
    case 'negative':
      return { type: 'negative', of: given[0] } as const
    case 'operation':
      return { type: 'operation', operator: value.operator, left: given[0], right: given[1] } as const
    case 'form':
      return { type: 'form', form: value.form, arguments: given } as const
  }
}
