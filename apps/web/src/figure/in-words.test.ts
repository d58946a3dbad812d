import { afterEach, expect, it } from 'vitest'
import { readAs } from '../ways/testing.ts'
import { typeset } from './in-words.ts'

let back = () => {}
afterEach(() => back())

const formula = '0.5 * monod(ammonia, 0.02) / 1.5 - x2'

it('a formula has the signs of print', () => {
  expect(typeset(formula)).toBe('0.5 × monod(ammonia, 0.02) ÷ 1.5 − x2')
})

it('a formula has the decimal comma of its reader, and its arguments stay apart', () => {
  back = readAs({ decimal: 'comma' })
  expect(typeset(formula)).toBe('0,5 × monod(ammonia; 0,02) ÷ 1,5 − x2')
})
