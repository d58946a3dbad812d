import type { Model } from '../assemble/model.ts'
import type { Equations } from '../integrate/index.ts'
import { kernelOf } from './model-kernel.ts'
import { shapeOf } from './shape-of.ts'

/** A model with one set of parameters and settings as a function, for questions about a moment. */
export function equationsOf(model: Model, parameters: Float64Array, settings: Float64Array): Equations {
  const owner = {}
  return {
    ...shapeOf(model),
    rates: (y, out) => {
      const compiled = kernelOf(model)
      const { kernel } = compiled
      const { memory } = kernel
      if (compiled.owner !== owner) {
        compiled.owner = owner
        for (const member of [0, 1] as const) compiled.setParameters(member, parameters)
        compiled.setSettings(settings)
      }
      for (const member of [0, 1]) memory.set(memory.at.start, member, y)
      kernel.withFlows(() => kernel.run.begin(0))
      memory.getFlows(memory.at.flows, 0, out)
    },
  }
}
