import type { Expression } from './parse.ts'

/** A whole number is written with its point, so that C does not divide whole numbers. */
const number = (value: number): string => (Number.isInteger(value) ? `${value}.0` : String(value))

export const cIdentifier = (name: string): string => `_${name.replace('$', 'carried')}`

/** An expression in C, bracketed so that the order of operations is that of the formula. */
export function cExpression(expression: Expression, named: (name: string) => string = cIdentifier): string {
  const text = (part: Expression): string => cExpression(part, named)
  switch (expression.type) {
    case 'number':
      return number(expression.value)
    case 'name':
      return named(expression.name)
    case 'negative':
      return `(-${text(expression.of)})`
    case 'operation':
      return `(${text(expression.left)} ${expression.operator} ${text(expression.right)})`
    case 'form':
      return `${expression.form}(${expression.arguments.map(text).join(', ')})`
  }
}
