import { rmSync, utimesSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { tree } from './checks/testing/tree.mjs'
import { stampOf } from './stamp.mjs'

/** A small project, and its stamp as it is now. */
function project() {
  const folder = tree({
    'package-lock.json': '{}',
    'vite.shared.ts': '',
    'vite.node.config.ts': '',
    'scripts/programs.mjs': '',
    'packages/facts/a.ts': 'one',
    'packages/facts/a.test.ts': 'test',
  })
  return { file: (path: string) => join(folder, path), stamp: () => stampOf(['packages', 'apps'], folder) }
}

describe('a build is stale', () => {
  it.each<[string, (file: (path: string) => string) => void]>([
    ['a source changed its size', (file) => writeFileSync(file('packages/facts/a.ts'), 'longer')],
    ['a source was written at another time', (file) => utimesSync(file('packages/facts/a.ts'), 1, 1)],
    ['a source came', (file) => writeFileSync(file('packages/facts/b.ts'), '')],
    ['a source went', (file) => rmSync(file('packages/facts/a.ts'))],
    ['the lockfile changed', (file) => writeFileSync(file('package-lock.json'), '{ }')],
  ])('when %s', (_, change) => {
    const { file, stamp } = project()
    const before = stamp()
    change(file)
    expect(stamp()).not.toBe(before)
  })
})

it('is fresh when only a test changed, or nothing', () => {
  const { file, stamp } = project()
  const before = stamp()
  writeFileSync(file('packages/facts/a.test.ts'), 'another test')
  expect(stamp()).toBe(before)
})
