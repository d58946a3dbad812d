import { coverOf } from '../derived/index.ts'
import { layerOf, namedStands, patchKey } from '../processes/stands.ts'
import type { Run } from './run.ts'

/** Most cover that one layer of one patch holds in any of the samples; 1 is all the ground there is. */
export function mostGround({
  model,
  samples,
  parameters,
}: Pick<Run, 'model' | 'samples' | 'parameters'>): number {
  const layers = new Map<string, ReturnType<typeof coverOf>[]>()
  for (const { of } of namedStands(model.system)) {
    const layer = `${layerOf(of.stand.kind)} ${patchKey(of)}`
    layers.set(layer, [...(layers.get(layer) ?? []), coverOf(model, of.stand)])
  }
  const taken = (states: Float64Array, covers: readonly ReturnType<typeof coverOf>[]): number =>
    covers.reduce((sum, of) => sum + of(states, parameters), 0)
  return Math.max(
    ...[...layers.values()].map((covers) => Math.max(...samples.map((states) => taken(states, covers)))),
  )
}
