import jsep from 'jsep'

/** A formula as a tree: numbers, names, the four operations and forms. */
export type Expression =
  | { readonly type: 'number'; readonly value: number }
  | { readonly type: 'name'; readonly name: string }
  | {
      readonly type: 'operation'
      readonly operator: '+' | '-' | '*' | '/'
      readonly left: Expression
      readonly right: Expression
    }
  | { readonly type: 'negative'; readonly of: Expression }
  | { readonly type: 'form'; readonly form: string; readonly arguments: readonly Expression[] }

const operators = new Set(['+', '-', '*', '/'])

/**
 * Reads the text of a formula.
 *
 * @throws Error naming the text and what is not understood
 */
export function parse(text: string): Expression {
  const fail = (what: string): never => {
    throw new Error(`Formula "${text}": ${what}. A formula has numbers, names, + - * / and forms.`)
  }
  const translate = (node: jsep.Expression): Expression => {
    if (isLiteral(node))
      return typeof node.value === 'number'
        ? { type: 'number', value: node.value }
        : fail(`${node.raw} is no number`)
    if (isName(node)) return { type: 'name', name: node.name }
    if (isBinary(node)) {
      if (!operators.has(node.operator)) return fail(`operator ${node.operator} is not known`)
      const operator = node.operator as '+' | '-' | '*' | '/'
      return { type: 'operation', operator, left: translate(node.left), right: translate(node.right) }
    }
    if (isUnary(node) && node.operator === '-') return { type: 'negative', of: translate(node.argument) }
    if (isCall(node) && isName(node.callee))
      return { type: 'form', form: node.callee.name, arguments: node.arguments.map(translate) }
    return fail(`"${node.type}" is not understood`)
  }
  return translate(jsep(text))
}

const isLiteral = (node: jsep.Expression): node is jsep.Literal => node.type === 'Literal'
const isName = (node: jsep.Expression): node is jsep.Identifier => node.type === 'Identifier'
const isBinary = (node: jsep.Expression): node is jsep.BinaryExpression => node.type === 'BinaryExpression'
const isUnary = (node: jsep.Expression): node is jsep.UnaryExpression => node.type === 'UnaryExpression'
const isCall = (node: jsep.Expression): node is jsep.CallExpression => node.type === 'CallExpression'

/** Every name an expression uses. */
export function namesIn(expression: Expression): readonly string[] {
  switch (expression.type) {
    case 'number':
      return []
    case 'name':
      return [expression.name]
    case 'negative':
      return namesIn(expression.of)
    case 'operation':
      return [...namesIn(expression.left), ...namesIn(expression.right)]
    case 'form':
      return expression.arguments.flatMap(namesIn)
  }
}
