import { fact } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { describe, expect, test } from 'vitest'
import { assemble } from '../assemble/assemble.ts'
import type { System } from '../system.ts'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

const fed = (fish: number, facts: Readonly<Record<string, number>> = {}) =>
  run({
    system: {
      ...box,
      feeds: [{ kind: 'dry pellet', g_per_day: 1, N_mass_fraction: 0.07, P_mass_fraction: 0.012 }],
      animals: fish > 0 ? [{ kind: 'mixed reef fish', count: fish, mass_g: 10, role: 'fish' }] : [],
    },
    days: 10,
    facts,
  }).ledger

const from = { process: 'feeding', from: 'outside.feed' }

// N10: Polunin & Brothers 1989, J Fish Biol (abstract read): an adult jewel damselfish keeps 0.2 % of the
// C and 0.5 % of the N it eats. Meyer & Schultz 1985, Limnol Oceanogr 30:146 (abstract read): dissolved
// excretion of resting juvenile grunts has N:P 48, faeces 8, and over half of faecal P leaches in a day.
describe('where the food of a reef fish goes', () => {
  test('all of it goes somewhere: the parts add up to what was fed', () => {
    const ledger = fed(4)
    expect(moved(ledger, { ...from, atom: 'N' })).toBeCloseTo(((10 * 0.07) / 14.007) * 1e6, 0)
    expect(moved(ledger, { ...from, atom: 'P' })).toBeCloseTo(((10 * 0.012) / 30.974) * 1e6, 0)
  })

  test('a grown fish keeps a few per cent of the nitrogen at most, as the damselfish did', () => {
    const ledger = fed(4)
    const kept =
      moved(ledger, { ...from, atom: 'N', to: 'animals.fish' }) / moved(ledger, { ...from, atom: 'N' })
    expect(kept).toBeGreaterThan(0)
    expect(kept).toBeLessThan(0.05)
  })

  test('dissolved excretion of a grown fish has N:P of 15 to 30, that of a growing one well above the feed', () => {
    const excreted = (facts: Readonly<Record<string, number>>) => {
      // Leaching of faeces set to nothing: the paper tells excretion and faeces apart.
      const ledger = fed(4, { ...facts, 'min.leach_p.faeces': 0 })
      const N =
        moved(ledger, { ...from, atom: 'N', to: 'water.ammonia' }) +
        moved(ledger, { ...from, atom: 'N', to: 'water.labile' })
      return N / moved(ledger, { ...from, atom: 'P', to: 'water.phosphate' })
    }
    const grown = excreted({})
    expect(grown).toBeGreaterThan(15)
    expect(grown).toBeLessThan(30)
    // A juvenile keeps 30 % of N and half of P (as the use of N10 sets it); of the P it digests that leaves little.
    const feed = 0.07 / 14.007 / (0.012 / 30.974)
    expect(excreted({ 'fish.retain_n.adult': 0.3, 'fish.retain_p.adult': 0.35 })).toBeGreaterThan(1.5 * feed)
  })

  test('faeces have less nitrogen to phosphorus than the feed', () => {
    const ledger = fed(4, { 'min.leach_p.faeces': 0, 'feed.uneaten.tank': 0 })
    const faeces =
      moved(ledger, { ...from, atom: 'N', to: 'water.particles' }) /
      moved(ledger, { ...from, atom: 'P', to: 'water.particles' })
    expect(faeces).toBeLessThan(0.07 / 14.007 / (0.012 / 30.974))
    expect(faeces).toBeGreaterThan(2)
  })
})

test('with no mouth in the tank everything fed is waste', () => {
  const ledger = fed(0)
  for (const atom of ['N', 'P', 'C'])
    expect(moved(ledger, { ...from, atom, to: 'water.particles' })).toBeCloseTo(
      moved(ledger, { ...from, atom }),
      6,
    )
})

test('a feed of which nothing is told brings what the catalogue has for its kind', () => {
  const nitrogenOf = (kind: string, dry_fraction?: number): number => {
    const feed = { kind, g_per_day: 1, ...(dry_fraction === undefined ? {} : { dry_fraction }) }
    const { ledger } = run({ system: { ...box, feeds: [feed] }, days: 1 })
    return convert(moved(ledger, { atom: 'N', from: 'outside.feed' }), 'µmol', 'mg N')
  }
  expect(nitrogenOf('dry pellet')).toBeCloseTo(1000 * fact('feed.pellet.n').typical, 6)
  const dry = fact('feed.mysis.dry').typical
  expect(nitrogenOf('frozen mysis')).toBeCloseTo(1000 * dry * fact('feed.mysis.n_dry').typical, 6)
  expect(nitrogenOf('frozen mysis', 0.2)).toBeCloseTo((0.2 / dry) * nitrogenOf('frozen mysis'), 6)
})

// Garcia-Ruiz & Hall 1996 (abstract read): of the phosphorus of trout faeces 44 % was labile, the rest mostly calcium
// phosphate. So no more than 56 % of what fish do not digest may stay as bone.
test('of the phosphorus that fish do not digest up to a half or so stays as bone, and none of the nitrogen', () => {
  const feeds = [{ kind: 'dry pellet', g_per_day: 1 }]
  const animals = [{ kind: 'mixed reef fish', count: 5, mass_g: 12, role: 'fish' as const }]
  const { ledger } = run({ system: { ...box, feeds, animals }, days: 1 })
  const of = (to?: string): number => moved(ledger, { process: 'feeding', atom: 'P', ...(to && { to }) })
  const undigested = of() * (1 - fact('feed.uneaten.tank').typical) * (1 - fact('fish.digest_p').typical)
  expect(of('bed.mineral') / undigested).toBeGreaterThan(0.15)
  expect(of('bed.mineral') / undigested).toBeLessThan(0.56)
  expect(moved(ledger, { atom: 'N', to: 'bed.mineral' })).toBe(0)
})

test('a millilitre of live phytoplankton is mostly water, and a concentrate is told by its dry matter', () => {
  const brought = (atom: 'N' | 'P' | 'C', dry_fraction?: number): number => {
    const feed = { kind: 'phyto', g_per_day: 50, ...(dry_fraction === undefined ? {} : { dry_fraction }) }
    const { ledger } = run({ system: { ...box, feeds: [feed] }, days: 1 })
    return convert(moved(ledger, { atom, from: 'outside.feed' }), 'µmol', `mg ${atom}`)
  }
  const dry_mg = 50_000 * fact('feed.phyto.dry').typical
  expect(brought('N')).toBeCloseTo(dry_mg * fact('feed.phyto.n_dry').typical, 6)
  expect(brought('P')).toBeCloseTo(dry_mg * fact('feed.phyto.p_dry').typical, 6)
  expect(brought('C')).toBeCloseTo(dry_mg * fact('feed.phyto.c_dry').typical, 6)
  expect(brought('N', 0.05) / brought('N')).toBeCloseTo(0.05 / fact('feed.phyto.dry').typical, 6)
})

test('a feed that nobody knows is taken for pellets, and the ledger says so', () => {
  const leftOut = (feed: System['feeds'][number]) => assemble({ ...box, feeds: [feed] }).notModelled
  expect(leftOut({ kind: 'oat bran', g_per_day: 1 })).toEqual([
    'nutrients of oat bran: taken for those of dry pellets',
  ])
  expect(leftOut({ kind: 'oat bran', g_per_day: 1, N_mass_fraction: 0.02, P_mass_fraction: 0.007 })).toEqual(
    [],
  )
})

test('two feeds of one kind keep what is told of each', () => {
  const feed = (N_mass_fraction: number) => ({
    kind: 'pellet',
    g_per_day: 1,
    N_mass_fraction,
    P_mass_fraction: 0.01,
  })
  const { ledger } = run({ system: { ...box, feeds: [feed(0.05), feed(0.08)] }, days: 1 })
  expect(convert(moved(ledger, { atom: 'N', from: 'outside.feed' }), 'µmol', 'g N')).toBeCloseTo(0.13, 6)
})
