import { temporaryFolder } from '@holdfast/testing'
import { expect, test, vi } from 'vitest'
import { runHere } from './testing/run-here.ts'
import { systemFile } from './testing/small-reef.ts'

// An ensemble runs on for months, which a busy machine lets it do slowly.
vi.setConfig({ testTimeout: 120_000 })

const face = { vessel: 'display', light: '0 µmol/m2/s', hours: 0, age: '0 d' }

const newTank = (): string =>
  systemFile({
    vessels: [{ id: 'display', kind: 'display', water: '200 L' }],
    flow: [],
    surfaces: [{ id: 'rock', kind: 'rock_face', area: '1 m2', ...face }],
    rock: [{ kind: 'quarried dry', mass: '20 kg', age: '0 d' }],
    feeds: [],
    animals: [],
    equipment: [],
    algae: [],
    corals: undefined,
  })

test('a tank in the middle of its start-up is told what is still to be shown, in words and for programs', async () => {
  const data = temporaryFolder()
  await runHere(['system', 'add', newTank(), '--from', '2026-01-01'], data)
  await runHere(['log', 'dose', 'ammonium chloride', '1.5 g', '--at', '2026-01-01'], data)
  await runHere(['log', 'reading', 'ammonia', '1.2 mg/L N', '--at', '2026-01-15'], data)
  await runHere(['log', 'reading', 'nitrite', '4 mg/L NO2', '--at', '2026-01-15'], data)
  const asked = ['commissioning', '--members', '6']
  const { code, out } = await runHere([...asked, '--json'], data)
  expect(code).toBe(0)
  const answer = JSON.parse(out)
  expect(answer.ready_now).toBe(false)
  const state = (name: string) => answer.conditions.find((one: { name: string }) => one.name === name)?.state
  expect(state('nitrite_near_nothing')).toBe('open')
  expect(state('ammonia_challenge_cleared')).toBe('open')
  const words = (await runHere(asked, data)).out
  expect(words).toMatch(/^Start-up of .+ on 2026-01-15/)
  expect(words).toMatch(/^Nitrite next to nothing +not yet +4 mg\/L NO2, 2026-01-15 +at most 0.2 mg\/L NO2$/m)
  expect(words).toContain('no animal')
  for (const { name } of answer.conditions) expect(words).not.toContain(name)
})
