import type { Expression } from './parse.ts'
import { partialOf } from './partials.ts'
import type { Value } from './value-graph.ts'

/** The derivative of a value by an input: a formula in the names of values and of derivatives before it. */
export interface Derivative {
  readonly name: string
  readonly is: Expression
}

export interface Derivatives {
  /** In an order in which each needs those before it only. */
  readonly steps: readonly Derivative[]
  /** Formula of the derivative of a value by an input; undefined where it is zero. */
  readonly of: (value: Value, input: number) => Expression | undefined
  /** Inputs that a value changes with. */
  readonly inputs: (value: Value) => readonly number[]
}

const name = (of: string): Expression => ({ type: 'name', name: of })
const one: Expression = { type: 'number', value: 1 }
const isOne = (of: Expression): boolean => of.type === 'number' && of.value === 1

function times(left: Expression, right: Expression): Expression {
  if (isOne(left)) return right
  if (isOne(right)) return left
  return { type: 'operation', operator: '*', left, right }
}

/** A value as a formula: a number by itself, anything else by its name. */
export const asExpression = (value: Value): Expression =>
  value.type === 'number' ? { type: 'number', value: value.number } : name(value.name)

/**
 * Differentiates the values of a process by the inputs that change with the states, forward through the graph
 * by the chain rule. What parameters and settings alone give has no derivative.
 *
 * @param values  each after those it is made of, as `valueGraph` gives them
 */
export function differentiate(values: readonly Value[]): Derivatives {
  const steps: Derivative[] = []
  const known = new Map<Value, ReadonlyMap<number, Expression>>()
  for (const value of values) {
    if (!value.live) continue
    const byInput = new Map<number, Expression>()
    known.set(value, byInput)
    if (value.type === 'found') {
      if (value.found !== 'volume') byInput.set(value.found.input, one)
      continue
    }
    const inputs = new Set(value.of.flatMap((inner) => [...(known.get(inner)?.keys() ?? [])]))
    for (const input of inputs) {
      const parts = value.of.flatMap((inner, k) => {
        const outer = known.get(inner)?.get(input)
        return outer ? [times(partialBy(value, k), outer)] : []
      })
      const [first, ...rest] = parts
      const is = rest.reduce<Expression>(
        (left, right) => ({ type: 'operation', operator: '+', left, right }),
        first,
      )
      const step = { name: `${value.name}_by_${input}`, is }
      steps.push(step)
      byInput.set(input, name(step.name))
    }
  }
  return {
    steps,
    of: (value, input) => known.get(value)?.get(input),
    inputs: (value) => [...(known.get(value)?.keys() ?? [])].sort((a, b) => a - b),
  }
}

/** The derivative of a value by the k-th of what it is made of. */
function partialBy(value: Value, k: number): Expression {
  const given = value.of.map(asExpression)
  const [left, right] = given
  switch (value.type) {
    case 'number':
    case 'found':
      throw new Error(`${value.name} is made of nothing.`)
    case 'negative':
      return { type: 'number', value: -1 }
    case 'form':
      return partialOf(value.form, k, name(value.name), given)
    case 'operation':
      switch (value.operator) {
        case '+':
          return one
        case '-':
          return k === 0 ? one : { type: 'number', value: -1 }
        case '*':
          return k === 0 ? right : left
        case '/':
          return k === 0
            ? { type: 'operation', operator: '/', left: one, right }
            : {
                type: 'negative',
                of: { type: 'operation', operator: '/', left: name(value.name), right },
              }
      }
  }
}
