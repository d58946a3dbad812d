import { describe, expect, it } from 'vitest'
import { closing } from './test-counts.mjs'

const unit = { project: 'unit', ended: 0, passed: 10, failed: 0, skipped: 0 }
const browser = { project: 'browser', ended: 0, passed: 3, failed: 0, skipped: 0 }
const withoutBrowser = { ...browser, passed: 0, skipped: 3 }
const here = { isBuilt: true, hasBrowser: true, inCI: false }

describe('the end of npm test', () => {
  it('is one line of counts over both runs', () => {
    expect(closing([unit, browser], here)).toEqual({
      lines: ['', '13 passed, 0 failed, 0 skipped'],
      failed: false,
    })
  })

  it('tells in the last line how many tests want a browser that is not there', () => {
    const { lines, failed } = closing([unit, withoutBrowser], { ...here, hasBrowser: false })
    expect(lines.slice(1)).toEqual([
      '10 passed, 0 failed, 3 skipped',
      expect.stringContaining('Skipped 3 tests in a browser'),
    ])
    expect(failed).toBe(false)
  })

  it('fails in CI for want of a browser, not for a test that is meant for other machines', () => {
    expect(closing([unit, withoutBrowser], { ...here, hasBrowser: false, inCI: true }).failed).toBe(true)
    expect(closing([{ ...unit, skipped: 1 }, browser], { ...here, inCI: true }).failed).toBe(false)
  })

  it('counts a run that broke without a failed test as one failure', () => {
    const { lines, failed } = closing([{ ...unit, ended: 1 }, browser], here)
    expect(lines).toContain('13 passed, 1 failed, 0 skipped')
    expect(failed).toBe(true)
  })

  it('counts a failed build as one failure', () => {
    const { lines, failed } = closing([unit], { ...here, isBuilt: false })
    expect(lines).toContain('10 passed, 1 failed, 0 skipped')
    expect(failed).toBe(true)
  })

  it('is a failure when no test ran', () => {
    expect(closing([{ ...unit, passed: 0 }], here).failed).toBe(true)
  })
})
