import { afterEach, expect, test, vi } from 'vitest'
import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { stateId } from '../assemble/model.ts'
import { simulate } from '../simulate/simulate.ts'
import { timeline } from '../simulate/timeline.ts'
import { startOf } from '../start/start.ts'
import { reef, reefYear } from '../testing/systems.ts'
import { FastestDecay } from './spectral-radius.ts'

afterEach(() => void vi.restoreAllMocks())

const to = 60
/** Two runs that each keep within 1 % of the truth are no farther from each other. */
const apart = 0.02
const model = assemble(reef)
const parameters = typicalParameters(model)
const start = startOf(model, parameters, { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }, 0)
const moments = timeline({ system: reef, events: reefYear, from: 0, to, asOf: 0 })
const samples = Array.from({ length: 12 }, (_, n) => 5 * n + 4.1)
const run = () => simulate({ model, parameters, start, from: 0, to, timeline: moments, samples })

/** Every fastest decay that is found, slow or quick, is told as so much of it. */
function tellOnly(part: number): void {
  const { find } = FastestDecay.prototype
  vi.spyOn(FastestDecay.prototype, 'find').mockImplementation(function (this: FastestDecay, wants, found) {
    find.call(this, wants, (member, fastest, evaluations) => found(member, part * fastest, evaluations))
  })
}

test('a fastest decay told a thousand times too slow costs short steps and no truth: no run goes unstable in silence', () => {
  const sure = run()
  tellOnly(1e-3)
  const misled = run()
  expect(misled.statistics.quickEvaluations).toBeGreaterThan(1.2 * sure.statistics.quickEvaluations)
  for (const id of ['water.nitrate/N', 'water.phosphate/P', 'water.ammonia/N', 'water.nitrite/N']) {
    const state = model.states.findIndex((one) => stateId(one) === id)
    for (const [k, sample] of sure.samples.entries())
      expect(Math.abs(misled.samples[k][state] / sample[state] - 1), `${id} at sample ${k}`).toBeLessThan(
        apart,
      )
  }
})
