import { grazer } from '@holdfast/facts'
import { beforeAll, describe, expect, test, vi } from 'vitest'
import { loadSolver, type Solver } from './solver.ts'
import { type Drawn, dice, instance } from './testing/drawn.ts'

// A busy machine takes its time over them.
vi.setConfig({ testTimeout: 120_000 })

let solver: Solver
beforeAll(async () => {
  solver = await loadSolver()
})

const exactly = { gap: 1e-7, seconds: 60 }

/** The best value of a drawn programme, tightened or as it is written down. */
function best(number: number, loose: boolean) {
  const roll = dice(1000 + number)
  const drawn: Drawn = {
    volume_L: 40 + 900 * roll() ** 2,
    also: roll() < 0.3 ? { bubble: 0.1 } : roll() < 0.5 ? { red_cotton: 0.2 } : {},
    lush: 0.3 + roll(),
  }
  const liked = roll() < 0.3 ? ['snail'] : []
  const { crew } = instance(drawn, { withCaution: 'all', liked }, () => roll() < 0.4, loose)
  const solved = solver(crew.programme, exactly)
  return {
    cost: solved.status === 'solved' ? solved.cost : Number.NaN,
    status: solved.status,
    columns: crew.programme.columns.length,
  }
}

describe('what makes a programme quicker to solve', () => {
  test('leaves the best crew of twelve drawn systems as cheap as it was', () => {
    for (let number = 1; number <= 12; number++) {
      const [tight, loose] = [best(number, false), best(number, true)]
      expect(tight.status, `${number}`).toBe(loose.status)
      if (loose.status === 'solved') expect(tight.cost / loose.cost, `${number}`).toBeCloseTo(1, 5)
      expect(tight.columns).toBeLessThanOrEqual(loose.columns)
    }
  })

  test('lets fewer of a large fish come than there is room for, where little grows', () => {
    const uppers = (loose: boolean) => {
      const { programme, numbers } = instance(
        { volume_L: 1200, lush: 0.2 },
        { withCaution: 'all' },
        undefined,
        loose,
      ).crew
      return new Map(numbers.map(({ animal, come }) => [animal.taxon, programme.columns[come].upper]))
    }
    const [tight, loose] = [uppers(false), uppers(true)]
    for (const [taxon, upper] of tight) expect(upper, taxon).toBeLessThanOrEqual(loose.get(taxon) ?? 0)
    expect(
      [...tight].filter(([taxon, upper]) => grazer(taxon) && upper < (loose.get(taxon) ?? 0)).length,
    ).toBeGreaterThan(5)
  })
})
