import { infix } from './infix.ts'
import type { Expression } from './parse.ts'

/** A whole number is written with its point, so that C does not divide whole numbers. */
const number = (value: number): string => (Number.isInteger(value) ? `${value}.0` : String(value))

export const cIdentifier = (name: string): string => `_${name.replace('$', 'carried')}`

/** An expression in C. */
export const cExpression = (expression: Expression, named: (name: string) => string = cIdentifier): string =>
  infix(expression, named, number)
