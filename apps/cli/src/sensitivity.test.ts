import { temporaryFolder } from '@holdfast/testing'
import { expect, test, vi } from 'vitest'
import { runHere } from './testing/run-here.ts'
import { systemFile } from './testing/small-reef.ts'

// Every fact takes a run, which a busy machine does slowly.
vi.setConfig({ testTimeout: 60_000 })

const asked = ['sensitivity', '--days', '3', '--walks', '1', '--closer', '1', '--samples', '2']

test('the facts of each quantity come in the order in which they move it, the first with shares of its variance', async () => {
  const data = temporaryFolder()
  await runHere(['system', 'add', systemFile(), '--from', '2026-01-01'], data)
  const { out } = await runHere([...asked, '--json'], data)
  const { quantities, runs } = JSON.parse(out)
  expect(quantities.map(({ quantity }: { quantity: string }) => quantity)).toEqual([
    'nitrate',
    'phosphate',
    'cover',
  ])
  expect(runs).toBeGreaterThan(quantities[0].facts.length)
  for (const { facts } of quantities) {
    const changes = facts.map((one: { mean_change: number }) => one.mean_change)
    expect(changes).toEqual([...changes].sort((a: number, b: number) => b - a))
    expect(changes[0]).toBeGreaterThan(0)
    expect(facts[0].variance_share_alone).not.toBeNull()
    expect(facts.at(-1).variance_share_alone).toBeNull()
  }
  expect((await runHere([...asked, '--json'], data)).out).toBe(out)
  expect((await runHere(asked, data)).out).toContain('What moves the water and the algae most in 3 days')
})
