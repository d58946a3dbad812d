import type { System } from '@holdfast/ecosystem'
import { ordinaryReef } from '@holdfast/ecosystem/testing/ordinary-reef'
import { beforeAll, expect, test, vi } from 'vitest'
import { crewPlanOfSeveral, type SeveralAnswer } from './several.ts'
import { loadSolver } from './solver.ts'
import { presentOf } from './testing/present-of.ts'

// Each plan lives some years in the model, which a busy machine lets it do slowly.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 })

const snail = 'Trochus histrio'
const reef = ordinaryReef(3)
/** Far more snails than grow food there, and a like reef with none. */
const crowded: System = {
  ...reef,
  id: 'crowded',
  animals: [...reef.animals, { kind: 'snail', taxon: snail, count: 40, role: 'grazer' }],
}
const bare: System = { ...reef, id: 'bare' }

let answer: SeveralAnswer
beforeAll(async () => {
  const wishes = { only: [snail] }
  answer = crewPlanOfSeveral(
    [crowded, bare].map((system) => ({ present: presentOf(system), wishes })),
    await loadSolver(),
  )
})

test('snails that are too many in one reef go to the other before any is bought', () => {
  const [loan] = answer.lent
  expect(loan).toMatchObject({ taxon: snail, from: 'crowded', to: 'bare' })
  const [gives, takes] = answer.answers.map((one) => (one.status === 'none' ? undefined : one.crew[0]))
  expect(loan.count).toBeGreaterThan(1)
  expect(loan.count).toBeLessThanOrEqual(gives?.leave ?? 0)
  expect(loan.count).toBeLessThanOrEqual(takes?.come ?? 0)
  // Only those that are not lent are ordered.
  expect(takes?.order).toBe(Math.round(((takes?.come ?? 0) - loan.count) / (1 - 0.12)))
})

test('each crew was tried in its own reef, and holds there', () => {
  expect(answer.answers.map(({ status }) => status)).toEqual(['plan', 'plan'])
})
