import { temporaryFolder } from '@holdfast/testing'
import { expect, test, vi } from 'vitest'
import { runHere } from './testing/run-here.ts'
import { systemFile } from './testing/small-reef.ts'

// A plan lives some years in the model, which a busy machine lets it do slowly.
vi.setConfig({ testTimeout: 120_000 })

test('a crew is told with its trial, what is left to the hand, and why others do not come', async () => {
  const data = temporaryFolder()
  await runHere(['system', 'add', systemFile(), '--from', '2026-01-01'], data)
  const asked = ['crew', '--members', '6', '--never', 'urchin']
  const { code, out } = await runHere([...asked, '--json'], data)
  expect(code).toBe(0)
  const answer = JSON.parse(out)
  expect(['plan', 'none']).toContain(answer.status)
  expect(answer.barred.find(({ taxon }: { taxon: string }) => taxon === 'Mespilia globulus')).toMatchObject({
    code: 'refused',
  })
  const words = (await runHere(asked, data)).out
  expect(words).toMatch(/^Crew of .+ on 2026-/)
  for (const { taxon } of answer.crew ?? []) expect(words).toContain(taxon)
})
