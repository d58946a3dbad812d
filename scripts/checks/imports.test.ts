import { spawnSync } from 'node:child_process'
import { symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from '../root.mjs'
import { importIssues } from './imports.mjs'
import { tree } from './testing/tree.mjs'

const manifest = (...dependencies: string[]) =>
  JSON.stringify({ dependencies: Object.fromEntries(dependencies.map((name) => [name, '*'])) })

describe('imports that are right', () => {
  it('go down the order, to declared packages, and to files of their own package', () => {
    const sound = tree({
      'package.json': JSON.stringify({ devDependencies: { vitest: '*' } }),
      'packages/quantities/package.json': manifest(),
      'packages/quantities/src/index.ts': 'export const litre = 1',
      'packages/facts/package.json': manifest('@holdfast/quantities', 'zod'),
      'packages/facts/src/index.ts': `import { litre } from '@holdfast/quantities'
        import * as z from 'zod/mini'
        export * from './fact.ts'
        export const schema = z.number().check(z.minimum(litre))`,
      'packages/facts/src/fact.ts': 'export const fact = 1',
      'packages/facts/src/fact.test.ts': `import { it } from 'vitest'
        import { readFileSync } from 'node:fs'
        it(String(readFileSync), () => {})`,
      'packages/logbook/package.json': manifest('@holdfast/ecosystem'),
      'packages/logbook/src/index.ts': `import type { System } from '@holdfast/ecosystem'
        import { readFileSync } from 'node:fs'
        export const read = (path: string): System => JSON.parse(readFileSync(path, 'utf8'))`,
    })
    expect(importIssues(sound)).toEqual([])
  })

  it('are all that this project has', () => {
    expect(importIssues(root)).toEqual([])
  })
})

describe('an import that points up the order', () => {
  it('is refused in the code and in package.json', () => {
    const upward = tree({
      'packages/facts/package.json': manifest('@holdfast/inference'),
      'packages/facts/src/index.ts': `export const a = 1\nexport { outlook } from '@holdfast/inference'`,
    })
    expect(importIssues(upward)).toEqual([
      expect.stringMatching(/^packages\/facts\/package\.json: depends on @holdfast\/inference/),
      expect.stringMatching(
        /^packages\/facts\/src\/index\.ts:2: imports @holdfast\/inference, .*does not stand below/,
      ),
    ])
  })

  it.each([
    ['a dynamic import', `export const later = () => import('@holdfast/planning')`],
    ['a type by import()', `export type Plan = import('@holdfast/planning').Plan`],
    ['import type', `import type { Plan } from '@holdfast/planning'\nexport type P = Plan`],
    ['export *', `export * from '@holdfast/planning'`],
  ])('is refused as %s too', (_, code) => {
    const upward = tree({
      'packages/ecosystem/package.json': manifest(),
      'packages/ecosystem/src/index.ts': code,
    })
    expect(importIssues(upward)).toEqual([expect.stringContaining('imports @holdfast/planning')])
  })

  it('is refused between neighbours of the same height, and between apps', () => {
    const sideways = tree({
      'packages/facts/package.json': manifest(),
      'packages/facts/src/index.ts': `import '@holdfast/seawater'`,
      'apps/web/package.json': manifest(),
      'apps/web/src/main.ts': `import '@holdfast/server'`,
    })
    expect(importIssues(sideways)).toHaveLength(2)
  })
})

describe('logbook', () => {
  it.each([
    ['a value', `import { simulate } from '@holdfast/ecosystem'\nexport const s = simulate`],
    [
      'a value beside a type',
      `import { type System, simulate } from '@holdfast/ecosystem'\nexport const s = simulate`,
    ],
    ['the module for its effects', `import '@holdfast/ecosystem'`],
  ])('may not import %s of ecosystem', (_, code) => {
    const values = tree({
      'packages/logbook/package.json': manifest('@holdfast/ecosystem'),
      'packages/logbook/src/index.ts': code,
    })
    expect(importIssues(values)).toEqual([
      'packages/logbook/src/index.ts:1: imports a value of @holdfast/ecosystem; packages/logbook may import its types only.',
    ])
  })
})

describe('a relative import', () => {
  it.each([
    `import '../../quantities/src/index.ts'`,
    `export const worker = new Worker(new URL('../../quantities/src/worker.ts', import.meta.url))`,
    `export const all = import.meta.glob('../../quantities/src/*.ts')`,
  ])('may not leave its package: %s', (code) => {
    const leaving = tree({ 'packages/facts/package.json': manifest(), 'packages/facts/src/index.ts': code })
    expect(importIssues(leaving)).toEqual([expect.stringContaining('leaves packages/facts')])
  })

  it('may not go in a circle of values', () => {
    const circle = tree({
      'packages/facts/package.json': manifest(),
      'packages/facts/src/a.ts': `import { b } from './b.ts'\nexport const a = () => b`,
      'packages/facts/src/b.ts': `import { a } from './a.ts'\nexport const b = () => a`,
    })
    expect(importIssues(circle)).toEqual([
      'packages/facts/src/a.ts: imports itself: packages/facts/src/a.ts -> packages/facts/src/b.ts -> packages/facts/src/a.ts',
    ])
  })

  it('may name a type of a file that imports it, since types leave no code', () => {
    const types = tree({
      'packages/facts/package.json': manifest(),
      'packages/facts/src/a.ts': `import type { B } from './b.ts'\nexport interface A { b: B }`,
      'packages/facts/src/b.ts': `import { a } from './a.ts'\nexport type B = typeof a`,
    })
    expect(importIssues(types)).toEqual([])
  })
})

it('refuses a package that package.json does not name, a package of Node in a pure package, and a package without a place', () => {
  const strange = tree({
    'packages/facts/package.json': manifest(),
    'packages/facts/src/index.ts': `import { z } from 'zod'\nimport 'node:fs'\nexport const s = z`,
    'packages/novelty/package.json': manifest(),
  })
  expect(importIssues(strange)).toEqual([
    'packages/facts/src/index.ts:1: imports zod, which packages/facts/package.json does not name.',
    expect.stringContaining('also runs in a browser'),
    expect.stringContaining('packages/novelty: has no place'),
  ])
})

describe("a short name of a package's own file", () => {
  const short = (target: string) =>
    tree({
      'apps/web/package.json': JSON.stringify({
        imports: { '#model': { example: './src/example.ts', default: target } },
      }),
      'apps/web/src/main.ts': `import { model } from '#model'\nexport const m = model`,
    })

  it('is fine', () => {
    expect(importIssues(short('./src/model.ts'))).toEqual([])
  })

  it('may not stand for another package', () => {
    expect(importIssues(short('@holdfast/server'))).toEqual([
      'apps/web/package.json: "imports" names @holdfast/server, which is no file of apps/web.',
    ])
  })
})

it('lets the configuration of a package use the configuration of the project, and nothing else beside it', () => {
  const configured = tree({
    'apps/web/package.json': manifest(),
    'apps/web/vite.config.ts': `import { plugins } from '../../vite.shared.ts'\nexport default plugins()`,
    'apps/web/main.ts': `import { plugins } from '../../vite.shared.ts'\nexport default plugins()`,
  })
  expect(importIssues(configured)).toEqual([
    expect.stringMatching(/^apps\/web\/main.ts:1: .*leaves apps\/web/),
  ])
})

it.skipIf(process.platform === 'win32')(
  'ends with exit code 1 when the check is reached through a link',
  () => {
    const upward = tree({ 'packages/novelty/package.json': manifest() })
    const link = join(upward, 'scripts')
    symlinkSync(join(root, 'scripts'), link)
    const run = spawnSync(process.execPath, [join(link, 'checks/imports.mjs')], {
      cwd: upward,
      encoding: 'utf8',
    })
    expect(run.stderr).toContain('packages/novelty: has no place')
    expect(run.status).toBe(1)
  },
)

it('ends with exit code 1 and names the place when it is run on a tree with a wrong import', () => {
  const upward = tree({
    'packages/quantities/package.json': manifest(),
    'packages/quantities/src/index.ts': `import '@holdfast/ecosystem'`,
  })
  const run = spawnSync(process.execPath, [join(root, 'scripts/checks/imports.mjs')], {
    cwd: upward,
    encoding: 'utf8',
  })
  expect(run.status).toBe(1)
  expect(run.stderr).toContain('packages/quantities/src/index.ts:1: imports @holdfast/ecosystem')
})
