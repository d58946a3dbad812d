import { expect, test } from 'vitest'
import measured from './eaten.json' with { type: 'json' }
import { eatenInADay, published } from './eaten.ts'

test('a published share of the body becomes grams of dry algae by the dry share of algae and the mass of the animal', () => {
  const turban = measured.find(({ taxon }) => taxon === 'Turbo fluctuosa')
  if (!turban) throw new Error('No turban.')
  // 1.06 to 6.08 % of 50 g a day, wet, of which 8 to 20 % is dry.
  const [least, most] = published(turban)
  expect(least).toBeCloseTo(0.0106 * 50 * 0.08, 6)
  expect(most).toBeCloseTo(0.0608 * 50 * 0.2, 6)
})

test('what grazers eat by the catalogue reaches what was published, but for misses that are named', () => {
  const checks = eatenInADay()
  expect(checks.filter(({ outcome }) => outcome === 'failed')).toEqual([])
  expect(checks.filter(({ outcome }) => outcome === 'passed').length).toBeGreaterThanOrEqual(10)
})

test('a taxon that the catalogue does not have is told by name', () => {
  expect(() => published({ ...measured[0], taxon: 'Nemo nullius' })).toThrow(/Nemo nullius/)
})
