import type { Model } from '../assemble/model.ts'
import { kernelOf } from '../simulate/model-kernel.ts'

/** What one event would move, by its compiled kernel; before any limit. */
export function compiledAmounts(
  model: Model,
  event: string,
  { y, settings, parameters }: { y: Float64Array; settings: Float64Array; parameters: Float64Array },
): Float64Array {
  const out = new Float64Array(model.eventFluxes.length)
  const block = model.events.get(event)
  if (!block) throw new Error(`The model has no event ${event}.`)
  const compiled = kernelOf(model)
  const { memory } = compiled.kernel
  compiled.owner = out
  compiled.setParameters(0, parameters)
  compiled.setSettings(settings)
  memory.set(memory.at.start, 0, y)
  compiled.happen(block, [])
  memory.getList(memory.at.eventFlows, 0, out)
  return out
}
