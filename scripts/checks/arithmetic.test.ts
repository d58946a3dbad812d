import { describe, expect, it } from 'vitest'
import { arithmeticIssues } from './arithmetic.mjs'

describe('arithmetic that an engine may round in its own way', () => {
  it.each([
    ['Math.exp(1)', 'Math.exp'],
    ['Math.pow(2, 3)', 'Math.pow'],
    ['Math.hypot(1, 2)', 'Math.hypot'],
    ['Math.random()', 'Math.random'],
    [`Math['exp'](1)`, 'Math'],
    ['const { log } = Math', 'Math'],
    ['globalThis.Math.log(2)', 'Math.log'],
    ['2 ** 3', '**'],
  ])('is found in %s', (code, named) => {
    const issues = arithmeticIssues('growth.ts', `const one = 1\nexport const x = one; ${code}`)
    expect(issues).toHaveLength(1)
    expect(issues[0]).toContain(`growth.ts:2: ${named}`)
  })

  it('is found in **= and beside exact calls on the same line', () => {
    const issues = arithmeticIssues('growth.ts', 'let y = Math.max(1, Math.log(2)); y **= 2')
    expect(issues).toHaveLength(2)
  })
})

it('lets functions pass that are exact on every engine', () => {
  const exact = `const a = Math.abs(-1) + Math.min(1, 2) + Math.floor(1.5) + Math.sqrt(2) + Math.imul(2, 3) + Math.PI
    // Math.exp in a comment, and in a text: ${'`'}Math.exp 2 ** 3${'`'}
    const b = 'Math.exp(2) ** 3'`
  expect(arithmeticIssues('exact.ts', exact)).toEqual([])
})
