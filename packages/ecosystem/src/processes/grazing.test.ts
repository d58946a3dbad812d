import { algaeKinds, catalogueAlone, consumptionId, fact, grazers, taste } from '@holdfast/facts'
import { expect, test } from 'vitest'
import type { Surface } from '../system.ts'
import { offeredAlone } from '../testing/offered-alone.ts'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box, plate, reef } from '../testing/systems.ts'
import { reaches } from './reach.ts'

const pairs = grazers().flatMap(({ taxon }) => algaeKinds().map(({ key }) => [taxon, key] as const))

test('of a kind offered alone in plenty each animal eats taste times appetite, never more', () => {
  const wrong = pairs.flatMap(([taxon, kind]) => {
    const eaten = offeredAlone(taxon, kind)
    if (eaten === undefined) return []
    const left = fact(
      `grazing.appetite_left.${grazers().find((one) => one.taxon === taxon)?.appetite}`,
    ).typical
    const most = taste(taxon, kind).preference * fact(consumptionId(taxon)).typical * left
    return eaten > most * (1 + 1e-12) || eaten < 0.99 * most ? [`${taxon}, ${kind}: ${eaten} of ${most}`] : []
  })
  expect(wrong).toEqual([])
}, 60_000)

test('an animal that has no taste for a kind takes none of it', () => {
  const refused = pairs.filter(([taxon, kind]) => taste(taxon, kind).preference === 0)
  expect(refused.length).toBeGreaterThan(10)
  expect(refused.filter(([taxon, kind]) => offeredAlone(taxon, kind) !== undefined)).toEqual([])
})

/** What is left of the appetite for a stand of a height, relative to a low one. */
const atHeight = (taxon: string, height_mm: number): number =>
  (offeredAlone(taxon, 'hair_green', { height_mm }) ?? Number.NaN) /
  (offeredAlone(taxon, 'hair_green') ?? Number.NaN)

// Estimates of the tables: 5 mm for all; a fifth is left of 30 mm for snails and of 12 mm for combing mouths.
const bites: readonly (readonly [string, string, readonly (readonly [number, number])[]])[] = [
  [
    'a snail',
    'Trochus histrio',
    [
      [5, 1],
      [17.5, 0.6],
      [30, 0.2],
      [60, 0.2],
    ],
  ],
  [
    'a bristletooth',
    'Ctenochaetus strigosus',
    [
      [5, 1],
      [8.5, 0.6],
      [12, 0.2],
      [30, 0.2],
    ],
  ],
  [
    'a cropping tang',
    'Zebrasoma flavescens',
    [
      [5, 1],
      [30, 1],
      [65, 0.6],
      [100, 0.2],
    ],
  ],
  [
    'an urchin',
    'Tripneustes gratilla',
    [
      [5, 1],
      [30, 1],
      [65, 0.6],
      [100, 0.2],
    ],
  ],
]

test.each(bites)('%s bites as high as its mouth allows', (_, taxon, heights) => {
  for (const [height, share] of heights) expect(atHeight(taxon, height)).toBeCloseTo(share, 6)
})

const behindComb: Surface = { ...plate, kind: 'plumbing_overflow', enclosed: true, opening_mm: 5 }
const snail = (size_cm: number) => ({
  kind: 'trochus snail',
  taxon: 'Trochus histrio',
  count: 40,
  adult_size_cm: size_cm,
  role: 'grazer' as const,
})

test('a surface behind a comb of 5 mm gets no grazing from a snail of 3 cm, and some from one of 8 mm', () => {
  const patches = ['open', 'half_hidden', 'hidden'] as const
  expect(patches.map((patch) => reaches(behindComb, 'Trochus histrio', patch, 3, catalogueAlone))).toEqual([
    false,
    false,
    false,
  ])
  const eaten = (size_cm: number) =>
    moved(
      run({
        system: {
          ...box,
          surfaces: [behindComb],
          algae: [{ kind: 'hair_green', surface: 'plate', cover: 1 }],
          animals: [snail(size_cm)],
        },
        days: 30,
      }).ledger,
      { process: 'grazing', atom: 'C' },
    )
  expect(eaten(3)).toBe(0)
  expect(eaten(0.8)).toBeGreaterThan(0)
})

test('a crew that is told in two lots eats what it eats when it is told in one', () => {
  const eaten = (...counts: readonly number[]) =>
    moved(
      run({
        system: {
          ...box,
          surfaces: [plate],
          algae: [{ kind: 'hair_green', surface: 'plate', cover: 1 }],
          animals: counts.map((count) => ({ ...snail(3), count })),
        },
        days: 10,
      }).ledger,
      { process: 'grazing', atom: 'C' },
    )
  expect(eaten(15, 25)).toBe(eaten(40))
})

// Tebbett et al. 2017 (abstract read): bristletooths whisk detritus and diatoms and leave the length of turf as it is.
test('a bristletooth takes little of hair algae of 12 mm and much of the same when short', () => {
  const left = (share: number): number => {
    const { ledger, course } = run({
      system: {
        ...box,
        vessels: [{ id: 'display', kind: 'display', volume_L: 5000 }],
        surfaces: [{ ...plate, area_m2: 2, light_umol_m2_s: 0 }],
        algae: [{ kind: 'hair_green', surface: 'plate', cover: 1 }],
        animals: [{ kind: 'bristletooth', taxon: 'Ctenochaetus strigosus', count: 1, role: 'grazer' }],
      },
      days: 5,
      facts: { ...nothingUnexplained, 'algae.hair_green.canopy_height': share * 2 },
      samples: [0, 5],
    })
    return moved(ledger, { process: 'grazing', atom: 'C' }) / course('surface.plate.hair_green.open/C')[0]
  }
  // Stands begin at half of their full height, which the fact above sets.
  const [short, long] = [left(4), left(14)]
  expect(long).toBeLessThan(0.6 * short)
})

// Bites on upright forms tear more than they swallow: 10 to 30 % drifts off (guess of the tables).
test('of upright seaweeds more of a bite drifts off than of hair algae', () => {
  const adrift = (kind: string): number => {
    const { ledger } = run({
      system: {
        ...box,
        surfaces: [plate],
        algae: [{ kind, surface: 'plate', cover: 0.8 }],
        animals: [{ kind: 'urchin', taxon: 'Tripneustes gratilla', count: 1, role: 'grazer' }],
      },
      days: 5,
    })
    const grazed = { process: 'grazing', atom: 'N' }
    return moved(ledger, { ...grazed, to: 'water.particles' }) / moved(ledger, grazed)
  }
  expect(adrift('macro') - adrift('hair_green')).toBeGreaterThan(0.05)
})

/** As many as there are: hunger and age would bring both crews to the same number. */
const asMany = {
  ...nothingUnexplained,
  'crew.starvation': 0,
  'grazer.trochus_histrio.mortality': 0,
}

/** The third year: in the first ones the stock of algae itself moves with the number of mouths. */
function thirdYear(times: number) {
  const system = {
    ...reef,
    algae: reef.algae.slice(0, 1),
    animals: reef.animals.map((one) => (one.role === 'grazer' ? { ...one, count: one.count * times } : one)),
  }
  const outcome = run({ system, days: 1095, samples: [], marks: [730, 1095], facts: asMany })
  const exported = (atom: string) =>
    outcome.ledger.rows
      .filter((row) => row.atom === atom && row.to.startsWith('outside.'))
      .reduce((sum, row) => sum + row.amount_umol, 0)
  const cover = outcome.model.states.reduce(
    (sum, state, k) =>
      state.kind === 'plain' && state.state.id.startsWith('cover.') ? sum + outcome.end[k] : sum,
    0,
  )
  return { cover, N: exported('N'), P: exported('P') }
}

test('twice the snails change the cover much and what leaves the system hardly: grazers hold down, they do not export', () => {
  const [some, twice] = [thirdYear(1.5), thirdYear(3)]
  // A part of their appetite goes to the waste on the floor, which is as much for few as for many.
  expect(twice.cover).toBeLessThan(0.9 * some.cover)
  expect(Math.abs(twice.N / some.N - 1)).toBeLessThan(0.05)
  expect(Math.abs(twice.P / some.P - 1)).toBeLessThan(0.05)
}, 60_000)
