/**
 * @typedef {object} Run
 * @property {string} project 'unit' or 'browser'
 * @property {number} ended the exit code
 * @property {number} passed
 * @property {number} failed
 * @property {number} skipped
 */

/**
 * The last lines of `npm test` and its outcome. A run that ends badly without a failed test (a file
 * that does not load, a crash) counts as one failed, and so does a build that failed.
 *
 * @param {readonly Run[]} runs
 * @param {{ readonly isBuilt: boolean, readonly hasBrowser: boolean, readonly inCI: boolean }} where
 * @returns {{ readonly lines: readonly string[], readonly failed: boolean }}
 */
export function closing(runs, { isBuilt, hasBrowser, inCI }) {
  const passed = sum(runs, ({ passed }) => passed)
  const failed =
    (isBuilt ? 0 : 1) + sum(runs, ({ failed, ended }) => (ended !== 0 ? Math.max(failed, 1) : failed))
  const skipped = sum(runs, ({ skipped }) => skipped)
  const inBrowser = hasBrowser ? 0 : (runs.find(({ project }) => project === 'browser')?.skipped ?? 0)

  const counts = `${passed} passed, ${failed} failed, ${skipped} skipped`
  const missing = `Skipped ${inBrowser} tests in a browser: no Chrome, Edge or Chromium found. Set HOLDFAST_BROWSER to the path of one.`
  const unbuilt = 'The build failed (above), so nothing was tested in a browser.'
  const strict = 'In CI a test that is skipped for want of a browser is a failure.'
  const lines = [
    '',
    ...(isBuilt ? [] : [unbuilt]),
    ...(inCI && inBrowser > 0 ? [strict] : []),
    counts,
    ...(inBrowser > 0 ? [missing] : []),
  ]
  return { lines, failed: failed > 0 || passed === 0 || (inCI && inBrowser > 0) }
}

/** @param {readonly Run[]} runs @param {(run: Run) => number} of */
function sum(runs, of) {
  return runs.reduce((total, run) => total + of(run), 0)
}
