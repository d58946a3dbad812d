/**
 * `npm run check`: format, lint, types and the project's own checks. All of them run, so that one
 * look shows everything that is to be mended; the exit code is 1 if any failed.
 */
import { spawnSync } from 'node:child_process'
import { prepare } from './prepare.mjs'
import { toolEntry } from './tools.mjs'

prepare()

/** @type {readonly { readonly name: string, readonly args: readonly string[] }[]} */
const checks = [
  {
    name: 'format and lint',
    args: [toolEntry('@biomejs/biome', 'biome'), 'check', '--error-on-warnings', '.'],
  },
  { name: 'types', args: [toolEntry('typescript', 'tsc'), '-p', '.'] },
  { name: 'imports', args: ['scripts/checks/imports.mjs'] },
  { name: 'exact arithmetic', args: ['scripts/checks/arithmetic.mjs'] },
  { name: 'lockfile', args: ['scripts/checks/lockfile.mjs'] },
  { name: 'text of the project', args: ['scripts/checks/text.mjs'] },
  { name: 'weight of the page', args: ['scripts/checks/page-weight.mjs'] },
]

const failed = checks.filter(({ name, args }) => {
  console.log(`\n== ${name}`)
  const run = spawnSync(process.execPath, args, { stdio: 'inherit' })
  return run.status !== 0
})

console.log(
  failed.length === 0
    ? `\nAll ${checks.length} checks passed.`
    : `\nFailed: ${failed.map(({ name }) => name).join(', ')}.`,
)
process.exitCode = failed.length === 0 ? 0 : 1
