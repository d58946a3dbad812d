import { catalogueAlone, fact } from '@holdfast/facts'
import { convert } from '@holdfast/quantities'
import { expect, test } from 'vitest'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'
import { broughtBy } from './brought-by-water.ts'

const nitrate = (water: Parameters<typeof broughtBy>[0]): number =>
  convert(broughtBy(water, 'NO3', catalogueAlone), 'µmol L⁻¹', 'mg NO3 L⁻¹')

test('what is told of water goes before what is usual of its kind', () => {
  expect(nitrate({ kind: 'tap water' })).toBeCloseTo(fact('wc.tap.no3').typical, 9)
  expect(nitrate({ kind: 'tap water', NO3_mg_L: 40 })).toBeCloseTo(40, 9)
  expect(nitrate({ kind: 'well behind the house' })).toBe(0)
})

test('a membrane leaves some sixteenth of the nitrate of tap water, and resin hardly any', () => {
  expect(nitrate({ kind: 'reverse osmosis' }) / nitrate({ kind: 'tap water' })).toBeCloseTo(0.06, 9)
  expect(nitrate({ kind: 'deionised' })).toBeLessThan(0.1 * nitrate({ kind: 'reverse osmosis' }))
})

test('synthetic salt brings its ammonia with every change of water', () => {
  const changed = [{ day: 0.5, kind: 'water change' as const, volume_L: 10 }]
  const { ledger } = run({
    system: { ...box, salt_mix: { kind: 'synthetic salt' } },
    days: 1,
    events: changed,
  })
  const ammonia = moved(ledger, {
    process: 'water change',
    atom: 'N',
    from: 'outside.salt',
    to: 'water.ammonia',
  })
  expect(convert(ammonia, 'µmol', 'mg N')).toBeCloseTo(10 * fact('wc.salt.nh4').typical, 9)
})
