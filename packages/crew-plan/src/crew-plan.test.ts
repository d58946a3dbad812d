import { needLeft } from '@holdfast/ecosystem'
import { ordinaryReef } from '@holdfast/ecosystem/testing/ordinary-reef'
import { catalogueAlone, factsOfSystem, type Grazer, grazer, needId } from '@holdfast/facts'
import { beforeAll, describe, expect, test, vi } from 'vitest'
import { crewPlan } from './crew-plan.ts'
import type { BookLine, CrewAnswer } from './index.ts'
import { issuesOf } from './lessons.ts'
import type { Wishes } from './question.ts'
import { settingOf } from './setting.ts'
import { loadSolver, type Solver } from './solver.ts'
import { presentOf } from './testing/present-of.ts'
import { toFeedOf } from './to-feed.ts'
import { trialRun } from './trial-run.ts'

// A plan lives some years in the model, which a busy machine lets it do slowly.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 })

let solver: Solver
beforeAll(async () => {
  solver = await loadSolver()
})

/** A reef of 130 L on whose rock hair algae, turf and films grow. */
const reef = ordinaryReef(3)

type Answer = Exclude<CrewAnswer, { readonly status: 'none' }>
function planFor(wishes: Wishes, present = presentOf(reef)): Answer {
  const answer = crewPlan({ present, wishes }, solver)
  if (answer.status === 'none') throw new Error(answer.issues.map(({ got }) => got).join('; '))
  return answer
}

const snail = 'Trochus histrio'
const ofTaxon = (taxon: string): Grazer => {
  const animal = grazer(taxon)
  if (!animal) throw new Error(taxon)
  return animal
}

/** The same reef, where a hand takes off next to nothing of what it brushes. */
const clumsy = () =>
  presentOf(
    reef,
    undefined,
    factsOfSystem([
      { fact: 'crew_plan.thorough', unit: '1', low: 0.01, typical: 0.02, high: 0.03, reason: 'a test' },
    ]),
  )

describe('a reef of 130 L', () => {
  const nobody: Wishes = { only: [] }
  let usual: Answer
  beforeAll(() => {
    usual = planFor({})
  })

  test('is held by some snails with a little work of the hand, and nobody starves', () => {
    const { status, crew, check } = usual
    expect(status).toBe('plan')
    expect(check.issues).toEqual([])
    expect(crew.filter(({ group }) => group === 'snail').length).toBeGreaterThan(0)
    expect(Math.max(...check.crew.map(({ hunger }) => hunger))).toBeLessThanOrEqual(0.5)
  })

  test('is held by the hand alone where the keeper wants no animal, for more work', () => {
    const work = ({ byHand }: Answer): number =>
      byHand.reduce((sum, { grams_dry_per_week }) => sum + grams_dry_per_week, 0)
    const alone = planFor(nobody)
    expect(alone).toMatchObject({ status: 'plan', crew: [] })
    expect(work(alone)).toBeGreaterThan(work(usual))
  })

  test('gets a refusal that names the places where neither mouth nor hand keeps the algae down', () => {
    const { status, check } = planFor(nobody, clumsy())
    expect(status).toBe('refused')
    expect(check.issues.length).toBeGreaterThan(0)
    for (const { code, where } of check.issues) {
      expect(code).toBe('not held')
      expect(where).toMatch(/rock_face|glass|sand/)
    }
  })
})

describe('wishes that no crew keeps together', () => {
  const answerTo = (wishes: Wishes): CrewAnswer => crewPlan({ present: presentOf(reef), wishes }, solver)
  const clashOf = (wishes: Wishes) => {
    const answer = answerTo(wishes)
    return answer.status === 'none' ? (answer.clashes ?? []) : []
  }

  test('a conch for a dollar: the two clash, and the least budget that buys one is told', () => {
    const [clash, ...others] = clashOf({ liked: ['conch'], budget_usd: 1, mostOfOne: 20 })
    expect(others).toEqual([])
    expect(clash.limits).toEqual(['a budget of 1 US$', 'at least one conch'])
    const [budget, conch] = clash.relaxations
    expect(conch).toMatchObject({ limit: 'at least one conch' })
    expect(budget.to).toBeGreaterThan(1)
    const enough = budget.to ?? Number.NaN
    expect(clashOf({ liked: ['conch'], budget_usd: enough })).toEqual([])
    expect(clashOf({ liked: ['conch'], budget_usd: enough - 2 })).toHaveLength(1)
  })

  test('no work by hand and one animal of a kind: how many more of a kind, or how much work, would do', () => {
    const [clash] = clashOf({ byHandMost_g_week: 0.1, mostOfOne: 1, only: ['Trochus histrio'] })
    expect(clash.limits).toContain('at most 0.1 g a week by hand')
    expect(clash.relaxations.find(({ limit }) => limit === clash.limits[0])?.to).toBeGreaterThan(0.1)
  })

  test('an animal that cannot live there is told with what bars it, before anything is reckoned', () => {
    const answer = answerTo({ liked: ['Zebrasoma flavescens'] })
    expect(answer).toMatchObject({ status: 'none', issues: [{ code: 'not to be had' }] })
    expect(answer.status === 'none' && answer.issues[0].got).toMatch(/needs at least/)
  })

  test('whoever is liked and finds food comes', () => {
    const { crew } = planFor({ liked: ['conch'] })
    expect(crew.some(({ group, come }) => group === 'conch' && come > 0)).toBe(true)
  })
})

describe('a plan for a reef of 1750 L', () => {
  let answer: Answer
  beforeAll(() => {
    answer = planFor({ withCaution: 'all' }, presentOf(ordinaryReef(4)))
  })

  test('comes with others that cost at most a tenth more, hold as well and eat by other mouths', () => {
    const eaters = (crew: Answer['crew']) =>
      new Set(crew.flatMap(({ taxon, come }) => (come > 0 ? [taxon] : [])))
    for (const other of answer.alternatives) {
      expect(other.cost).toBeLessThanOrEqual(1.1 * answer.cost + 0.01)
      expect(other.check.issues).toEqual([])
      expect([...eaters(other.crew)]).not.toEqual([...eaters(answer.crew)])
    }
    expect(answer.alternatives.length).toBeGreaterThan(0)
  })

  test('brings nobody who would eat next to nothing of the algae, nor do the others', () => {
    for (const { crew } of [answer, ...answer.alternatives])
      for (const { taxon, come, eats_g_week } of crew)
        if (come > 0)
          expect(eats_g_week, taxon).toBeGreaterThan(0.1 * 7 * come * catalogueAlone.typical(needId(taxon)))
  })

  test('says what is lost in a year by which cause, and the causes add up to all that is lost', () => {
    expect(answer.crew.length).toBeGreaterThan(0)
    for (const { turnover, lostInYear, taxon } of answer.crew) {
      const { firstMonth, age, mates, hunger } = turnover
      expect(firstMonth + age + mates + hunger, taxon).toBeCloseTo(lostInYear, 9)
      expect(Math.min(firstMonth, age, mates, hunger), taxon).toBeGreaterThanOrEqual(0)
      expect(firstMonth, taxon).toBeGreaterThan(0)
    }
  })

  test('has books that balance: what comes in is what goes out and what is inside more, with it and without', () => {
    const { books = [] } = answer
    const sum = (of: (line: BookLine) => number, start: string): number =>
      books.filter(({ stream }) => stream.startsWith(start)).reduce((all, line) => all + of(line), 0)
    for (const of of [
      ({ N_mg_day }: BookLine) => N_mg_day,
      ({ P_mg_day }: BookLine) => P_mg_day,
      ({ without }: BookLine) => without.N_mg_day,
      ({ without }: BookLine) => without.P_mg_day,
    ]) {
      const comes = sum(of, 'in: ')
      expect(comes).toBeGreaterThan(0)
      expect((sum(of, 'out: ') + sum(of, 'more inside')) / comes).toBeCloseTo(1, 6)
    }
    // What is eaten comes back but for what stays in bodies.
    const [eaten, water, droppings] = ['algae eaten', 'of it back into the water', 'of it as droppings'].map(
      (stream) => books.find((line) => line.stream === stream),
    )
    expect(eaten?.N_mg_day).toBeGreaterThan(eaten?.without.N_mg_day ?? 0)
    const back = (water?.N_mg_day ?? 0) + (droppings?.N_mg_day ?? 0)
    expect(back).toBeGreaterThan(0)
    expect(back).toBeLessThanOrEqual((eaten?.N_mg_day ?? 0) + 1e-9)
  })

  test('says what becomes of water and algae with it and without, and with it less stands on the rock', () => {
    const { effect } = answer
    expect(effect?.water).toHaveLength(12)
    const onRock = effect?.cover.filter(
      ({ surface, kind }) => surface === 'rock_face' && kind === 'hair_green',
    )
    const sum = (of: 'cover' | 'without'): number => onRock?.reduce((all, one) => all + one[of], 0) ?? 0
    expect(sum('without')).toBeGreaterThan(2 * sum('cover'))
  })
})

describe('a reef of 130 L with more snails than find food in a lean year', () => {
  const crowded = presentOf({
    ...reef,
    animals: [...reef.animals, { kind: 'snail', taxon: snail, count: 40, role: 'grazer' }],
  })
  const [fed, kept] = [{ only: [snail] }, { only: [snail], keep: 'all' as const }]

  test('is planned all the same, and says how many are too many and what the rest lacks', () => {
    const { status, toFeed = [], check, crew } = planFor(fed, crowded)
    expect(status).toBe('plan')
    const [snails] = toFeed
    expect(snails).toMatchObject({ taxon: snail })
    const stay = crew.reduce((sum, { there, leave }) => sum + there - leave, 0)
    expect(snails.count).toBe(stay)
    expect(snails.tooMany).toBeGreaterThan(0)
    expect(snails.tooMany).toBeLessThanOrEqual(stay)
    // Never more than all of them need, and hunger that a year in the model has shown.
    expect(snails.g_week).toBeGreaterThan(0)
    expect(snails.g_week).toBeLessThanOrEqual(7 * stay * needLeft(snail, reef, catalogueAlone))
    expect(check.crew.find(({ taxon }) => taxon === snail)?.hunger).toBeGreaterThan(0.5)
  })

  test('without so many as are too many nobody is hungry', () => {
    const [{ tooMany, count } = { tooMany: 0, count: 0 }] = planFor(kept, crowded).toFeed ?? []
    expect(count).toBe(40)
    const { crew } = trialRun(crowded, [{ day: crowded.day, taxon: snail, count: -tooMany }])
    expect(crew.find(({ taxon }) => taxon === snail)?.hunger).toBeLessThanOrEqual(0.5)
  })

  test('those that all go are neither hungry nor to be fed, though the model has no food for nobody', () => {
    const gone = trialRun(crowded, [{ day: crowded.day, taxon: snail, count: -40 }])
    expect(gone.crew.find(({ taxon }) => taxon === snail)?.hunger).toBeGreaterThan(0.5)
    const setting = settingOf({ present: crowded, wishes: {} })
    const crew = {
      numbers: [{ animal: ofTaxon(snail), there: 40, come: 0, leave: 40 }],
      byHand: [],
      steps: [],
    }
    expect(issuesOf(crew, gone, () => 1, crowded.day)).toEqual([])
    expect(toFeedOf(crew, gone, setting)).toEqual([])
  })
})

test('snails of another vessel are no part of the crew, and those that come eat where the crew is for alone', () => {
  const shelf = { ...reef.surfaces[0], id: 'shelf', vessel: 'sump', area_m2: 0.1 }
  const present = presentOf({
    ...reef,
    vessels: [...reef.vessels, { id: 'sump', kind: 'sump', volume_L: 30, glass_volume_L: 40 }],
    surfaces: [...reef.surfaces, shelf],
    algae: [...reef.algae, { kind: 'film_green', surface: 'shelf', cover: 0.5 }],
    animals: [...reef.animals, { kind: 'snail', taxon: snail, count: 3, role: 'grazer', vessel: 'sump' }],
  })
  const setting = settingOf({ present, wishes: {} })
  expect(setting.home.id).toBe(reef.vessels[0].id)
  expect([...setting.demand.living.keys()]).toEqual([])
  const other = 'Turbo bruneus'
  const { held } = trialRun(present, [{ day: present.day, taxon: other, count: 4 }])
  const eaten = (surface: string): number =>
    held
      .filter((place) => place.surface === surface)
      .reduce((sum, { grazed_g_d }) => sum + (grazed_g_d.get(other) ?? 0), 0)
  expect(eaten('shelf')).toBe(0)
  expect(eaten('rock_face')).toBeGreaterThan(0)
  // Room is that of the vessel meant: what needs more than the sump has is not to come there.
  const inSump = settingOf({ present, wishes: { vessel: 'sump' } })
  expect(inSump.barred.find(({ taxon }) => taxon === 'Mespilia globulus')).toMatchObject({ code: 'no room' })
  expect(inSump.demand.living.get(snail)).toBe(3)
})

describe('where next to nothing grows', () => {
  const dark = reef.surfaces.map((surface) => ({ ...surface, light_umol_m2_s: 1 }))
  const present = presentOf({ ...reef, surfaces: dark })

  test('a wish for a snail is told as what no crew can keep', () => {
    const answer = crewPlan({ present, wishes: { liked: [snail] } }, solver)
    expect(answer).toMatchObject({ status: 'none', clashes: [{ limits: [`at least one ${snail}`] }] })
  })

  test('snails that come all the same starve in the trial, and that is a ground to refuse', () => {
    const crew = {
      numbers: [{ animal: ofTaxon(snail), there: 0, come: 10, leave: 0 }],
      byHand: [],
      steps: [],
    }
    const trial = trialRun(present, [{ day: present.day, taxon: snail, count: 10 }])
    expect(issuesOf(crew, trial, () => 1, present.day)).toMatchObject([
      { about: snail, issue: { code: 'starves' } },
    ])
    expect(toFeedOf(crew, trial, settingOf({ present, wishes: {} }))).toEqual([])
  })
})
