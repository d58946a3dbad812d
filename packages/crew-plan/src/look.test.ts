import { assemble, settingsOn, startOf, timeline } from '@holdfast/ecosystem'
import { test } from 'vitest'
import { ordinaryReef } from '../../ecosystem/src/testing/ordinary-reef.ts'
import { crewPlan, loadSolver } from './index.ts'

test('look', async () => {
  const solver = await loadSolver()
  for (const n of [2, 3, 5, 7, 1]) {
    const system = ordinaryReef(n)
    const model = assemble(system)
    const parameters = Float64Array.from(model.parameters, (p) => p.band.typical)
    const states = startOf(model, parameters, { nitrate_mg_L: 8, phosphate_mg_L: 0.06 }, 0)
    const routine = (to: number) =>
      timeline({ system: model.system, facts: model.facts, events: [], from: 0, to, asOf: 0 })
    const t = performance.now()
    const answer = crewPlan(
      {
        present: {
          model,
          day: 0,
          worlds: [{ parameters, states, settings: settingsOn(model, routine(1), 0) }],
          weights: [1],
          routine,
        },
        wishes: { withCaution: n % 2 ? 'all' : [] },
      },
      (p, s) => {
        const t1 = performance.now()
        const r = solver(p, s)
        console.log('solve', p.columns.length, p.rows.length, performance.now() - t1, r.status)
        return r
      },
    )
    console.log(n, system.vessels[0], performance.now() - t, 'ms')
    if (answer.status === 'none') console.log(answer.issues)
    else
      console.log(
        answer.status,
        answer.crew.map((c) => `${c.come}x ${c.taxon} lost ${c.lostInYear.toFixed(1)}`),
        answer.byHand,
        answer.check.issues,
        answer.check.crew.map((c) => `${c.taxon} hunger ${c.hunger.toFixed(2)}`),
        JSON.stringify(answer.steps),
      )
  }
})
