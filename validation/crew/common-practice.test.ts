import { loadSolver, type Wishes } from '@holdfast/crew-plan'
import { type Drawn, dice, drawnSystem, instance } from '@holdfast/crew-plan/testing/drawn'
import type { Grazer } from '@holdfast/facts'
import { beforeAll, describe, expect, test, vi } from 'vitest'

// A busy machine takes its time over a large programme.
vi.setConfig({ testTimeout: 60_000 })

let solver: Awaited<ReturnType<typeof loadSolver>>
beforeAll(async () => {
  solver = await loadSolver()
})

/** The animals of the best crew, with their number. */
function crewOf(
  drawn: Drawn,
  wishes: Wishes = {},
): readonly { readonly animal: Grazer; readonly count: number }[] {
  const { programme, numbers } = instance(drawn, wishes).crew
  const solved = solver(programme, { gap: 0.01, seconds: 20 })
  if (solved.status !== 'solved') throw new Error(solved.status)
  return numbers
    .map(({ animal, come }) => ({ animal, count: solved.values[come] }))
    .filter(({ count }) => count > 0)
}

const count = (crew: ReturnType<typeof crewOf>, of: (animal: Grazer) => boolean): number =>
  crew.filter(({ animal }) => of(animal)).reduce((sum, one) => sum + one.count, 0)
const group =
  (name: string) =>
  (animal: Grazer): boolean =>
    animal.group === name

/** Thirty systems: fifteen just under a limit of keepers, fifteen just over it. */
const around = (litres: number): readonly (readonly [under: number, over: number])[] =>
  Array.from({ length: 15 }, (_, k) => {
    const roll = dice(litres + k)
    return [litres * (0.7 + 0.29 * roll()), litres * (1.01 + 0.2 * roll())] as const
  })
/** So many systems drawn between two volumes, on which a little less to a third more grows than in the table. */
const drawn = (many: number, from: number, to: number, also: Drawn['also'] = {}): readonly Drawn[] =>
  Array.from({ length: many }, (_, k) => {
    const roll = dice(from + 7 * k)
    return { volume_L: Math.round(from + (to - from) * roll()), lush: 0.9 + 0.4 * roll(), also }
  })
const offered = (volume_L: number): readonly Grazer[] =>
  instance({ volume_L }, { withCaution: 'all' }).candidates.map(({ animal }) => animal)

describe('what keepers hold to be so (common practice)', () => {
  test.each(around(190))('no tang lives in %d L, and only small bristletooths in %d L', (under, over) => {
    expect(offered(under).filter(group('tang'))).toEqual([])
    const tangs = offered(over).filter(group('tang'))
    expect(tangs.length).toBeGreaterThan(0)
    expect(tangs.every(({ mouth, adultSize_cm }) => mouth === 'bristletooth' && adultSize_cm < 17)).toBe(true)
  })

  test.each(around(285))('no yellow tang lives in %d L, one may in %d L', (under, over) => {
    const yellow = ({ taxon }: Grazer): boolean => taxon === 'Zebrasoma flavescens'
    expect(offered(under).some(yellow)).toBe(false)
    expect(offered(over).some(yellow)).toBe(true)
  })

  test.each(drawn(8, 50, 140))('a tank of $volume_L L gets a blenny and tens of snails at most', (tank) => {
    const crew = crewOf(tank)
    expect(count(crew, group('blenny'))).toBe(1)
    expect(count(crew, group('tang'))).toBe(0)
    expect(count(crew, group('snail'))).toBeLessThan(40)
  })

  test.each(drawn(8, 540, 700))(
    'a reef of $volume_L L gets tens of snails, one or two tangs or rabbitfish, and a blenny where all may come',
    (reef) => {
      for (const wishes of [{}, { withCaution: 'all' }] as const) {
        const crew = crewOf(reef, wishes)
        expect(count(crew, group('snail'))).toBeGreaterThanOrEqual(10)
        expect(count(crew, group('snail'))).toBeLessThanOrEqual(100)
        expect([1, 2]).toContain(count(crew, group('tang')) + count(crew, group('rabbitfish')))
      }
      expect(count(crewOf(reef, { withCaution: 'all' }), group('blenny'))).toBe(1)
    },
  )

  test.each(drawn(6, 80, 640, { red_cotton: 0.3 }))(
    'red cotton algae bring large turban snails into $volume_L L',
    (reef) => {
      const large = ({ group: of, adultSize_cm }: Grazer): boolean => of === 'snail' && adultSize_cm >= 5
      expect(count(crewOf(reef, { withCaution: 'all' }), large)).toBeGreaterThan(0)
    },
  )

  test.each(drawn(6, 120, 640, { bubble: 0.15 }))(
    'bubble algae bring the emerald crab into $volume_L L, and with it a caution',
    (reef) => {
      expect(count(crewOf(reef, { withCaution: 'all' }), group('crab'))).toBeGreaterThan(0)
      const crab = instance(reef, { withCaution: 'all' }).candidates.find(
        ({ animal }) => animal.group === 'crab',
      )
      expect(crab?.cautions.length).toBeGreaterThan(0)
      expect(count(crewOf(reef), group('crab'))).toBe(0)
    },
  )

  test.each(drawn(4, 300, 900))(
    'beside snail-eating wrasses in $volume_L L urchins come and small snails do not',
    (reef) => {
      const crew = crewOf({ ...reef, mates: ['coris_wrasses'] }, { withCaution: 'all' })
      expect(count(crew, ({ group: of, adultSize_cm }) => of === 'snail' && adultSize_cm < 3)).toBe(0)
      expect(count(crew, group('urchin'))).toBeGreaterThan(0)
    },
  )

  test('where frags lie loose an urchin is told of with a caution', () => {
    const drawn = { volume_L: 600, corals: 'loose_frags' }
    const urchins = instance(drawn, { withCaution: 'all' }).candidates.filter(
      ({ animal }) => animal.group === 'urchin',
    )
    expect(urchins.length).toBeGreaterThan(0)
    expect(urchins.every(({ cautions }) => cautions.some((words) => /frag/i.test(words)))).toBe(true)
  })

  test('the regal tang, an eater of plankton, comes to no crew', () => {
    for (const volume_L of [700, 1000, 1500]) {
      const only = crewOf({ volume_L }, { withCaution: 'all', only: ['Paracanthurus hepatus'] })
      expect(only, `${volume_L} L`).toEqual([])
    }
  })

  test('a sealed overflow is given to the hand whole', () => {
    const overflow = {
      ...drawnSystem({ volume_L: 600 }).surfaces[0],
      id: 'overflow',
      kind: 'plumbing_overflow' as const,
      area_m2: 0.1,
    }
    const { programme, byHand } = instance(
      { volume_L: 600, surfaces: [{ ...overflow, enclosed: true }] },
      {},
    ).crew
    const solved = solver(programme, { gap: 0.01, seconds: 20 })
    const left = byHand.filter(({ place }) => place.surface === 'overflow')
    expect(left.length).toBeGreaterThan(0)
    for (const { place, column, share } of left)
      expect(solved.status === 'solved' && share * solved.values[column]).toBeGreaterThanOrEqual(
        place.growth_g_d,
      )
  })
})
