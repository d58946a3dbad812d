import * as forms from '../src/forms/index.ts'
import type { Expression } from './parse.ts'

type Form = (...values: readonly number[]) => number

/** The forms by name, for the plain evaluation. */
const formOf = (name: string): Form => {
  const found = Object.entries(forms).find(([key]) => key === name)
  if (!found) throw new Error(`Form "${name}" is not known. Forms: ${Object.keys(forms).join(', ')}.`)
  return found[1] as Form
}

/** Evaluates a formula by walking it: the readable truth that the generated kernel is held against. */
export function evaluate(expression: Expression, value: (name: string) => number): number {
  switch (expression.type) {
    case 'number':
      return expression.value
    case 'name':
      return value(expression.name)
    case 'negative':
      return -evaluate(expression.of, value)
    case 'operation': {
      const left = evaluate(expression.left, value)
      const right = evaluate(expression.right, value)
      switch (expression.operator) {
        case '+':
          return left + right
        case '-':
          return left - right
        case '*':
          return left * right
        case '/':
          return left / right
      }
    }
  }
  return formOf(expression.form)(...expression.arguments.map((argument) => evaluate(argument, value)))
}
