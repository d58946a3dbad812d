import { expect, test } from 'vitest'
import { assemble } from '../assemble/assemble.ts'
import type { Model } from '../assemble/model.ts'
import { layoutOf } from '../declare/index.ts'
import { strewnNumbers } from '../testing/numbers.ts'
import { equippedSystem } from '../testing/ordinary.ts'
import { happenings } from './happen.ts'
import { kernelOf } from './model-kernel.ts'
import type { Happening } from './moment.ts'
import { movedRatesOf } from './moved-rates.ts'

/** An event with half of all that may be asked for. */
function half(model: Model, id: string): Happening {
  const event = model.events.get(id)
  if (!event) throw new Error(`The model has no event ${id}.`)
  const { inputs } = layoutOf(event.process)
  const settings = [...event.inputs].flatMap((index, n) => {
    const input = inputs[n % inputs.length]
    return input.from === 'read' && input.read.read === 'setting' ? [model.settings.ids[index]] : []
  })
  return { day: 0, happens: id, with: Object.fromEntries(settings.map((setting) => [setting, 0.5])) }
}

test.each([31, 32, 33, 34])(
  'on drawn system %i slow rates with what an event moved put in are those worked out anew',
  (number) => {
    const drawn = equippedSystem(number)
    // These drink from the water in slow processes: silicate, and what spares them fixing nitrogen.
    const drinking = ['film_diatom', 'turf'].map((kind) => ({
      kind,
      surface: drawn.surfaces[0].id,
      cover: 0.2,
    }))
    const model = assemble({ ...drawn, algae: [...drawn.algae, ...drinking] })
    const compiled = kernelOf(model)
    const { memory, run } = compiled.kernel
    const { y, settings, parameters } = strewnNumbers(model, number)
    compiled.owner = model
    for (const member of [0, 1] as const) compiled.setParameters(member, parameters)
    compiled.setSettings(settings)
    const happen = happenings(model, compiled, [new Float64Array(model.eventFluxes.length)], false)
    let alone = 0
    for (const id of model.events.keys()) {
      const moment = half(model, id)
      const some = movedRatesOf(model).by([moment])
      if (!some) continue
      for (const member of [0, 1]) memory.set(memory.at.start, member, y)
      run.begin(0)
      const before = memory.get(memory.at.slopeStart, 0)
      for (const index of some) run.leaveOut(index)
      happen(moment)
      for (const index of some) run.putIn(index)
      const put = memory.get(memory.at.slopeStart, 0)
      run.begin(0)
      const anew = memory.get(memory.at.slopeStart, 0)
      anew.forEach((rate, i) => {
        const size = Math.max(Math.abs(rate), Math.abs(before[i]), 1)
        expect(Math.abs(put[i] - rate), `${id}, state ${i}`).toBeLessThan(1e-10 * size)
      })
      if (some.length > 0 && anew.some((rate, i) => rate !== before[i])) alone++
    }
    expect(alone).toBeGreaterThan(0)
  },
)
