/**
 * `npm test`: installs and builds what is missing, runs the unit tests, then those in a browser, and
 * closes with one line of counts. Without a browser its tests are skipped, and the last line says so;
 * in CI that is a failure. Words after `npm test --` choose files, as vitest does.
 */
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { built } from './build.mjs'
import { findBrowser } from './find-browser.mjs'
import { prepare } from './prepare.mjs'
import { closing } from './test-counts.mjs'
import { toolEntry } from './tools.mjs'

prepare()
const isBuilt = await built()
mkdirSync('.build', { recursive: true })

const hasBrowser = findBrowser() !== undefined
const noTestAtAll = ['--testNamePattern', '(?!)']
const unit = run('unit', [])
const browser = isBuilt ? [run('browser', hasBrowser ? [] : noTestAtAll)] : []
const { lines, failed } = closing([unit, ...browser], {
  isBuilt,
  hasBrowser,
  inCI: process.env.CI === 'true',
})
for (const line of lines) console.log(line)
process.exitCode = failed ? 1 : 0

/**
 * @param {string} project of vitest.config.ts
 * @param {readonly string[]} options
 * @returns {import('./test-counts.mjs').Run}
 */
function run(project, options) {
  const report = `.build/tests-${project}.json`
  rmSync(report, { force: true })
  const vitest = toolEntry('vitest', 'vitest')
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile=${report}`]
  const words = process.argv.slice(2)
  const { status } = spawnSync(
    process.execPath,
    [vitest, 'run', '--project', project, '--passWithNoTests', ...reporters, ...options, ...words],
    { stdio: 'inherit' },
  )
  return { project, ended: status ?? 1, ...counts(report) }
}

/** @param {string} report */
function counts(report) {
  try {
    const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(
      readFileSync(report, 'utf8'),
    )
    return { passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests + numTodoTests }
  } catch {
    return { passed: 0, failed: 0, skipped: 0 }
  }
}
