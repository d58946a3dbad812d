import type { System } from '@holdfast/ecosystem'
import { ordinaryReef } from '@holdfast/ecosystem/testing/ordinary-reef'
import { factsOfSystem, type OwnAnimal } from '@holdfast/facts'
import { beforeAll, expect, test, vi } from 'vitest'
import { crewPlan } from './crew-plan.ts'
import type { CrewAnswer } from './index.ts'
import { loadSolver, type Solver } from './solver.ts'
import { presentOf } from './testing/present-of.ts'
import { trialRun } from './trial-run.ts'

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 })

let solver: Solver
beforeAll(async () => {
  solver = await loadSolver()
})

const snail = 'Trochus histrio'
const own = 'Striped top snail'
const reef = ordinaryReef(3)
const withOwn = (told: Partial<OwnAnimal> = {}): System => ({
  ...reef,
  own_animals: [{ taxon: own, like: snail, ...told }],
})
const presentWith = (system: System) => presentOf(system, undefined, factsOfSystem([], system.own_animals))

/** Six of them in the model for a year. */
const lived = (system: System, taxon: string) => {
  const present = presentWith(system)
  const { crew, held } = trialRun(present, [{ day: present.day, taxon, count: 6 }])
  return {
    crew: crew.map((one) => ({ ...one, taxon: '' })),
    held: held.map(({ grazed_g_d, ...place }) => ({ ...place, grazed_g_d: [...grazed_g_d.values()] })),
  }
}

type Answer = Exclude<CrewAnswer, { readonly status: 'none' }>
function planOf(system: System, taxon: string): Answer {
  const answer = crewPlan({ present: presentWith(system), wishes: { only: [taxon] } }, solver)
  if (answer.status === 'none') throw new Error(answer.issues.map(({ got }) => got).join('; '))
  return answer
}
const counted = ({ crew }: Answer) => crew.map(({ come }) => come)

test('an animal of the keeper’s own lives in the model to the last bit as the one it is like', () => {
  expect(lived(withOwn(), own)).toEqual(lived(reef, snail))
})

test('one that eats less of what grows there leaves more of it', () => {
  const all = (told?: Partial<OwnAnimal>): number =>
    lived(withOwn(told), own).held.reduce((sum, { mass_g }) => sum + mass_g, 0)
  expect(all({ eats_g_per_day: 0.001 })).toBeGreaterThan(all())
})

test('one that does not eat a kind leaves that kind alone, and eats of the others', () => {
  const eaten = (told?: Partial<OwnAnimal>) => {
    const present = presentWith(withOwn(told))
    const { held } = trialRun(present, [{ day: present.day, taxon: own, count: 6 }])
    const of = (is: (kind: string) => boolean): number =>
      held.reduce((sum, { kind, grazed_g_d }) => sum + (is(kind) ? (grazed_g_d.get(own) ?? 0) : 0), 0)
    return { hair: of((kind) => kind === 'hair_green'), others: of((kind) => kind !== 'hair_green') }
  }
  const [usual, picky] = [eaten(), eaten({ tastes: { hair_green: 0 } })]
  expect(usual.hair).toBeGreaterThan(0)
  expect(picky.hair).toBe(0)
  expect(picky.others).toBeGreaterThan(0)
})

test('a plan takes as many of it as of the one it is like, and none where its vessel is too small', () => {
  const like = planOf(reef, snail)
  const mine = planOf(withOwn(), own)
  expect(counted(mine)).toEqual(counted(like))
  expect(mine.crew.map(({ taxon }) => taxon)).toEqual([own])
  const none = planOf(withOwn({ least_volume_L: 5000 }), own)
  expect(none.crew).toEqual([])
  expect(none.barred.find(({ taxon }) => taxon === own)?.why).toContain('at least 5000 L')
  const short: System = {
    ...withOwn({ least_length_cm: 400 }),
    vessels: reef.vessels.map((one) => ({ ...one, length_cm: 120 })),
  }
  expect(planOf(short, own).barred.find(({ taxon }) => taxon === own)?.why).toContain('at least 400 cm')
})
