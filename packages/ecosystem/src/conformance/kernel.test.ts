import { expect, test } from 'vitest'
import { plainRates } from '../../build/plain-rates.ts'
import { assemble } from '../assemble/assemble.ts'
import { scatter } from '../integrate/index.ts'
import { equationsOf } from '../simulate/equations-of.ts'
import { kernelOf } from '../simulate/model-kernel.ts'
import { strewnNumbers } from '../testing/numbers.ts'
import { equippedSystem } from '../testing/ordinary.ts'

/** On systems with a drawn part of all equipment, at drawn states, parameters and settings. */
test.each([21, 22, 23, 24, 25, 26])(
  'on drawn system %i the kernel has the bits of the declarations',
  (number) => {
    const model = assemble(equippedSystem(number))
    const plain = plainRates(model)
    for (const seed of [number, number + 100]) {
      const { y, settings, parameters } = strewnNumbers(model, seed)
      const [byKernel, byFormulas] = [0, 1].map(() => new Float64Array(model.fluxes.length))
      equationsOf(model, parameters, settings).rates(y, byKernel)
      plain({ y, settings, parameters }, byFormulas)
      expect(byKernel.findIndex((rate, k) => rate !== byFormulas[k])).toBe(-1)

      // The net rates that move the states are these flows, summed by the kernel on its own.
      const { memory } = kernelOf(model).kernel
      const slow = memory.get(memory.at.slopeStart, 0)
      const net = new Float64Array(model.states.length)
      const through = new Float64Array(model.states.length)
      scatter(memory.shape, byKernel, net)
      byKernel.forEach((rate, k) => {
        for (const end of [model.fluxes[k].from, model.fluxes[k].to])
          if (end >= 0) through[end] += Math.abs(rate)
      })
      const quick = memory.getQuick(memory.at.quickSlope, 0)
      net.forEach((rate, i) => {
        expect(Math.abs(slow[i] + quick[i] - rate)).toBeLessThanOrEqual(1e-12 * through[i])
      })
    }
  },
)
