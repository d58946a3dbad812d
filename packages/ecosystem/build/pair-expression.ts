import type { Expression } from './parse.ts'

const operations = { '+': 'add', '-': 'sub', '*': 'mul', '/': 'div' } as const

/** A formula in AssemblyScript, for two members at once. */
export function pairExpression(expression: Expression): string {
  switch (expression.type) {
    case 'number':
      return `both(${expression.value})`
    case 'name':
      return expression.name
    case 'negative':
      return `negative(${pairExpression(expression.of)})`
    case 'operation':
      return `${operations[expression.operator]}(${pairExpression(expression.left)}, ${pairExpression(expression.right)})`
    case 'form':
      return `F.${expression.form}(${expression.arguments.map(pairExpression).join(', ')})`
  }
}
