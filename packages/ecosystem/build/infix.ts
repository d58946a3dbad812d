import type { Expression } from './parse.ts'

/** An expression as most languages write it, bracketed so that the order of operations is that of the formula. */
export function infix(
  expression: Expression,
  named: (name: string) => string,
  number: (value: number) => string = String,
): string {
  const text = (part: Expression): string => infix(part, named, number)
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
