import { describe, expect, test } from 'vitest'
import { ordinarySystem } from '../testing/ordinary.ts'
import { run } from '../testing/run.ts'

/** mg/L after so many days, of the ion (ammonia as N). */
function waterAfter(number: number, days: number, feedFactor = 1) {
  const system = ordinarySystem(number)
  const { concentrations } = run({
    system: {
      ...system,
      feeds: system.feeds.map((feed) => ({ ...feed, g_per_day: feed.g_per_day * feedFactor })),
    },
    days,
    opening: { nitrate_mg_L: 8, phosphate_mg_L: 0.06 },
    samples: [days],
  })
  const of = (id: string, mass: number): number => (concentrations(id)[0] * mass) / 1000
  return {
    nitrate: of('water.nitrate/N', 62.005),
    phosphate: of('water.phosphate/P', 94.97),
    ammonia: of('water.ammonia/N', 14.007),
  }
}

// Four here, twenty over a year in `npm run validate`.
describe.each([2, 5, 12, 17])('ordinary system %i', (number) => {
  test('has ammonia under 0.03 mg/L as nitrogen', () => {
    expect(waterAfter(number, 90).ammonia).toBeLessThan(0.03)
  })

  test('has more nitrate on twice the feed and less on half of it', () => {
    const [half, usual, twice] = [0.5, 1, 2].map((factor) => waterAfter(number, 60, factor).nitrate)
    expect(half).toBeLessThan(usual)
    expect(twice).toBeGreaterThan(usual)
  })
})
