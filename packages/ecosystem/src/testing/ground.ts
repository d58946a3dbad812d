import { standCover } from '../accounts/index.ts'
import { type Model, stateIndex } from '../assemble/model.ts'
import { layerOf, namedStands, patchKey } from '../processes/stands.ts'

/** Most cover that one layer of one patch holds in any of the samples; 1 is all the ground there is. */
export function mostGround(model: Model, samples: readonly Float64Array[]): number {
  const layers = new Map<string, number[]>()
  for (const { of } of namedStands(model.system)) {
    const layer = `${layerOf(of.stand.kind)} ${patchKey(of)}`
    layers.set(layer, [...(layers.get(layer) ?? []), stateIndex(model, standCover(of.stand).id)])
  }
  const taken = (states: Float64Array, covers: readonly number[]): number =>
    covers.reduce((sum, k) => sum + states[k], 0)
  return Math.max(
    ...[...layers.values()].map((covers) => Math.max(...samples.map((states) => taken(states, covers)))),
  )
}
