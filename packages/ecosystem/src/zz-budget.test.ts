import { test } from 'vitest'
import { run } from './testing/run.ts'
import { ordinarySystem } from './testing/ordinary.ts'
test('x', () => {
  for (let n = 1; n <= 20; n++) {
    const system = ordinarySystem(n)
    const o = run({ system, days: 365, samples: [365], marks: [305, 365], opening: { nitrate_mg_L: 8, phosphate_mg_L: 0.06 } })
    const no3 = o.concentrations('water.nitrate/N')[0] * 0.062, po4 = o.concentrations('water.phosphate/P')[0] * 0.09497
    const kinds = system.equipment.map((e) => e.kind).join(',')
    const vol = system.vessels[0].volume_L
    console.log(`== ${n} V=${vol} rock=${system.rock[0].mass_kg.toFixed(0)} NO3 ${no3.toPrecision(2)} PO4 ${po4.toPrecision(2)} ${kinds}`)
    for (const atom of ['N', 'P']) {
      const into = new Map<string, number>()
      for (const r of o.ledger.rows) if (r.atom === atom && r.to.startsWith('outside')) into.set(r.to, (into.get(r.to) ?? 0) + r.amount_umol)
      for (const r of o.ledger.rows) if (r.atom === atom && r.from.startsWith('outside')) into.set(r.from, (into.get(r.from) ?? 0) - r.amount_umol)
      const fed = -(into.get('outside.feed') ?? 1)
      const inside = new Map<string, number>()
      for (const r of o.ledger.rows) if (r.atom === atom) { if (!r.to.startsWith('outside')) inside.set(r.to, (inside.get(r.to) ?? 0) + r.amount_umol); if (!r.from.startsWith('outside')) inside.set(r.from, (inside.get(r.from) ?? 0) - r.amount_umol) }
      console.log('  ', atom, `fed ${(fed / 60 / vol * (atom === 'N' ? 0.014 : 0.031)).toPrecision(2)} mg/L/d;`, [...into].filter(([, v]) => Math.abs(v / fed) > 0.004).map(([k, v]) => `${k.replace('outside.', '')} ${(100 * v / fed).toFixed(0)}`).join(' '), '| stored', [...inside].filter(([, v]) => Math.abs(v / fed) > 0.01).sort((a, b) => Math.abs(b[1]) - Math.abs(a[1])).slice(0, 7).map(([k, v]) => `${k} ${(100 * v / fed).toFixed(0)}`).join(' '))
    }
  }
}, 200000)
