import { test } from 'vitest'
import { run } from './testing/run.ts'
import { ordinarySystem } from './testing/ordinary.ts'
test('x', () => {
  const rows = Array.from({ length: 20 }, (_, n) => {
    const system = ordinarySystem(n + 1)
    const o = run({ system, days: 365, samples: [365], opening: { nitrate_mg_L: 8, phosphate_mg_L: 0.06 } })
    const ferric = system.equipment.some((e) => e.kind === 'ferric media reactor')
    return { no3: o.concentrations('water.nitrate/N')[0] * 0.062, po4: o.concentrations('water.phosphate/P')[0] * 0.09497, ferric }
  })
  const s = (k) => rows.map((r) => r[k]).sort((a, b) => a - b).map((x) => x.toPrecision(2)).join(' ')
  console.log('NO3', s('no3')); console.log('PO4', s('po4'))
  console.log('PO4 noferric', rows.filter((r) => !r.ferric).map((r) => r.po4.toPrecision(2)).join(' '))
}, 200000)
