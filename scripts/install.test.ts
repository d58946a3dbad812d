import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { tree } from './checks/testing/tree.mjs'
import { installed, npmEntry } from './install.mjs'

describe('what is installed', () => {
  const lock = {
    packages: {
      '': {},
      'packages/facts': { version: '0.1.0' },
      'node_modules/zod': { version: '4.1.0' },
      'node_modules/parts-win32': { version: '1.0.0', optional: true },
    },
  }

  it('is complete without the parts of other platforms', () => {
    expect(installed(lock, { packages: { 'node_modules/zod': { version: '4.1.0' } } })).toBe(true)
  })

  it('is not complete when the lock names another version', () => {
    expect(installed(lock, { packages: { 'node_modules/zod': { version: '4.0.0' } } })).toBe(false)
  })

  it('is not complete when a package is missing', () => {
    expect(installed(lock, { packages: {} })).toBe(false)
  })
})

describe('npm', () => {
  const cli = join('node_modules', 'npm', 'bin', 'npm-cli.js')

  it('is the one that started us', () => {
    expect(npmEntry('/opt/npm/bin/npm-cli.js', '/usr/bin/node', () => true)).toBe('/opt/npm/bin/npm-cli.js')
  })

  it('is found beside node when another package manager started us', () => {
    const beside = join('/nodes', '20', cli)
    const found = npmEntry(
      '/opt/other/bin/other.cjs',
      join('/nodes', '20', 'node'),
      (path) => path === beside,
    )
    expect(found).toBe(beside)
  })

  it('is found under lib when node stands in bin', () => {
    const under = join('/usr', 'lib', cli)
    expect(npmEntry(undefined, join('/usr', 'bin', 'node'), (path) => path === under)).toBe(under)
  })

  it('is not found where there is none', () => {
    expect(npmEntry(undefined, join('/usr', 'bin', 'node'), () => false)).toBeUndefined()
  })

  it('is found on a real disk beside a node', () => {
    const folder = tree({ [cli.replaceAll('\\', '/')]: '' })
    writeFileSync(join(folder, 'node'), '')
    expect(npmEntry(undefined, join(folder, 'node'))).toBe(join(folder, cli))
  })
})
