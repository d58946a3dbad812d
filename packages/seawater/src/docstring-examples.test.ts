import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import * as seawater from './index.ts'

interface Example {
  readonly file: string
  readonly expression: string
  readonly shown: string
}

const folder = new URL('./', import.meta.url)
const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
  (name) => name.endsWith('.ts') && !name.endsWith('.test.ts'),
)
/** `@example call(…) // number`, as it stands in the docstrings. */
const examples = sources.flatMap((file): readonly Example[] =>
  [...readFileSync(new URL(file, folder), 'utf8').matchAll(/@example (.+?) \/\/ (-?[\d.]+)$/gm)].map(
    ([, expression = '', shown = '']) => ({ file, expression, shown }),
  ),
)

test.each(examples)('$expression gives $shown, as its docstring in $file says', ({ expression, shown }) => {
  const names = Object.keys(seawater)
  const run = new Function(...names, `return ${expression}`) as (...values: readonly unknown[]) => number
  const { length: decimals } = shown.split('.')[1] ?? ''
  expect(run(...Object.values(seawater)).toFixed(decimals)).toBe(shown)
})

test('the published forms have an example each', () => {
  expect(examples.length).toBeGreaterThan(30)
})
