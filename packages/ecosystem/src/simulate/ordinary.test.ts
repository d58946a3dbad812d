import { describe, expect, test } from 'vitest'
import { ordinaryWater } from '../testing/ordinary-water.ts'

// Four here, twenty over a year in `npm run validate`.
describe.each([2, 5, 12, 17])('ordinary system %i', (number) => {
  test('has ammonia under 0.03 mg/L as nitrogen', () => {
    const [{ ammonia }] = ordinaryWater(number, [90])
    expect(ammonia).toBeLessThan(0.03)
  })

  test('has more nitrate on twice the feed and less on half of it', () => {
    const [half, usual, twice] = [0.5, 1, 2].map((factor) => ordinaryWater(number, [60], factor)[0].nitrate)
    expect(half).toBeLessThan(usual)
    expect(twice).toBeGreaterThan(usual)
  })
})
