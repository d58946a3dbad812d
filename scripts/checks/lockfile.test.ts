import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from '../root.mjs'
import { lockfileIssues, outOfStep } from './lockfile.mjs'

/** The lockfile of the project, to be doctored. */
const lock = (): { packages: Record<string, Record<string, unknown>> } =>
  JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'))

describe('the lockfile of this project', () => {
  it('has no issue', () => {
    expect(lockfileIssues(lock())).toEqual([])
  })

  it.each([
    ['@libsql/darwin-arm64', 'libsql'],
    ['@libsql/win32-x64-msvc', 'libsql'],
    ['@biomejs/cli-win32-x64', '@biomejs/biome'],
    ['@rolldown/binding-darwin-arm64', 'rolldown'],
    ['lightningcss-linux-x64-gnu', 'lightningcss'],
    ['@typescript/typescript-win32-x64', 'typescript'],
  ])('is refused without %s, a part of %s', (part, owner) => {
    const doctored = lock()
    expect(doctored.packages).toHaveProperty([`node_modules/${part}`])
    delete doctored.packages[`node_modules/${part}`]
    const issues = lockfileIssues(doctored)
    expect(issues).toContainEqual(
      expect.stringContaining(`node_modules/${owner}: its optional part ${part} is not`),
    )
  })

  it('is refused when the owner of native parts has none for a platform we run on', () => {
    const doctored = lock()
    const parts = doctored.packages['node_modules/libsql'].optionalDependencies as Record<string, string>
    delete parts['@libsql/darwin-arm64']
    delete doctored.packages['node_modules/@libsql/darwin-arm64']
    expect(lockfileIssues(doctored)).toEqual(['node_modules/libsql: has no part for darwin-arm64.'])
  })

  it('is refused with a package of another host', () => {
    const doctored = lock()
    doctored.packages['node_modules/hono'].resolved = 'https://packages.example.org/hono.tgz'
    expect(lockfileIssues(doctored)).toEqual([
      expect.stringContaining('node_modules/hono: comes from https://packages.example.org/hono.tgz'),
    ])
  })

  it('is refused with a host that only begins like the registry', () => {
    const doctored = lock()
    doctored.packages['node_modules/hono'].resolved = 'https://registry.npmjs.org.example.org/hono.tgz'
    expect(lockfileIssues(doctored)).toHaveLength(1)
  })

  it('is refused with an install script that nobody has named', () => {
    const doctored = lock()
    doctored.packages['node_modules/hono'].hasInstallScript = true
    expect(lockfileIssues(doctored)).toEqual([
      expect.stringContaining('node_modules/hono: runs a script when installed'),
    ])
    expect(lockfileIssues(doctored, { hono: 'looked at' })).toEqual([])
  })

  it('is refused with a package that has no checksum', () => {
    const doctored = lock()
    delete doctored.packages['node_modules/zod'].integrity
    expect(lockfileIssues(doctored)).toEqual(['node_modules/zod: has no checksum (integrity).'])
  })
})

describe('a lockfile beside package.json files', () => {
  const made = { packages: { 'packages/facts': { dependencies: { zod: '^4.0.0', hono: '*' } } } }

  it('is in step when they ask for the same, in any order', () => {
    expect(outOfStep(made, { 'packages/facts': { dependencies: { hono: '*', zod: '^4.0.0' } } })).toEqual([])
  })

  it('is out of step when one asks for another version, for one more, or is new', () => {
    const changed = outOfStep(made, {
      'packages/facts': { dependencies: { hono: '*', zod: '^4.1.0' } },
      'packages/new': { dependencies: { zod: '^4.0.0' } },
    })
    expect(changed).toEqual([
      expect.stringContaining('packages/facts'),
      expect.stringContaining('packages/new'),
    ])
  })
})
