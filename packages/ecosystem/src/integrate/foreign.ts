import { type Equations, scatter } from './equations.ts'
import { Kernel } from './kernel.ts'

/** Equations that are no model's, such as a published test problem, in a kernel: slow, and stepped alike. */
export function foreignKernel(equations: Equations): Kernel {
  const y = new Float64Array(equations.states)
  const flows = new Float64Array(equations.from.length)
  const slopes = new Float64Array(equations.states)
  const none = { settings: 0, parameters: 0, sums: 0, quickSums: 0, eventFluxes: 0, blocks: 0 }
  return new Kernel(equations, none, (memory) => {
    for (const member of [0, 1]) {
      memory.get(memory.at.stage, member, y)
      equations.rates(y, flows)
      memory.setFlows(memory.at.flows, member, flows)
      slopes.fill(0)
      scatter(equations, flows, slopes)
      memory.set(memory.at.slope, member, slopes)
    }
  })
}
