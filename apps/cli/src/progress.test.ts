import { expect, test } from 'vitest'
import { progress } from './progress.ts'
import type { Terminal } from './terminal.ts'

/** A terminal that keeps what it is told, and a clock that is set by hand. */
function kept(redraws: boolean) {
  const said: string[] = []
  const clock = { now: 0 }
  const terminal: Terminal = {
    out: () => undefined,
    err: (text) => said.push(text),
    redraws,
    agrees: () => Promise.resolve(undefined),
  }
  return { said, clock, run: progress(terminal, 'Ledger', () => clock.now) }
}

test('work of less than a second says nothing of itself', () => {
  const { said, clock, run } = kept(true)
  for (clock.now = 0; clock.now < 1000; clock.now += 100) run.onProgress(clock.now / 1000)
  run.done()
  expect(said).toEqual([])
})

test('in a terminal one line is drawn over and cleared at the end', () => {
  const { said, clock, run } = kept(true)
  for (clock.now = 0; clock.now <= 1250; clock.now += 50) run.onProgress(clock.now / 2000)
  run.done()
  expect(said).toEqual(['\rLedger: 50 %', '\rLedger: 55 %', '\rLedger: 60 %', `\r${' '.repeat(13)}\r`])
})

test('in a file a line comes every ten seconds', () => {
  const { said, clock, run } = kept(false)
  for (clock.now = 0; clock.now <= 25_000; clock.now += 500) run.onProgress(clock.now / 50_000)
  run.done()
  expect(said).toEqual(['Ledger: 2 %\n', 'Ledger: 22 %\n', 'Ledger: 42 %\n'])
})
