import { expect, test } from 'vitest'
import { filesBehind, tooHeavy, views } from './page-weight.mjs'

const manifest = {
  'index.html': { file: 'assets/index.js', imports: ['_shared.js'] },
  'src/today/index.tsx': { file: 'assets/today.js', imports: ['_shared.js', 'index.html'] },
  '_shared.js': { file: 'assets/shared.js' },
}

test('what two parts of a page share is fetched once', () => {
  expect(filesBehind(manifest, ['index.html', 'src/today/index.tsx'])).toEqual([
    'assets/index.js',
    'assets/shared.js',
    'assets/today.js',
  ])
})

test('a part that the build does not have is told, since nothing would be weighed', () => {
  expect(() => filesBehind(manifest, ['src/attic/index.tsx'])).toThrow('no part "src/attic/index.tsx"')
})

test('a view that is too heavy is named, and one that was not weighed is too heavy', () => {
  const light = Object.fromEntries(Object.keys(views).map((name) => [name, 90_000]))
  expect(tooHeavy(light)).toEqual([])
  expect(tooHeavy({ ...light, log: 100_001 })).toEqual([
    'log weighs 100 kB of script, packed. It may weigh 100 kB.',
  ])
  const { today: _, ...others } = light
  expect(tooHeavy(others)).toHaveLength(1)
})
