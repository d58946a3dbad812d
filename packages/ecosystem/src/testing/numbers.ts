import type { Model } from '../assemble/model.ts'
import { chance } from './chance.ts'

/**
 * States, settings and parameters strewn over what a system may meet, for checks that must hold for all.
 * Settings only shrink, for some are shares.
 */
export function strewnNumbers(model: Model, seed: number) {
  const draw = chance(seed)
  const scale = (): number => draw() * 4 ** (draw() * 6 - 3)
  return {
    y: Float64Array.from(model.states, (entry) =>
      entry.kind === 'plain' ? draw() : scale() * model.volume_L * 10,
    ),
    settings: Float64Array.from(model.settings.values, (value) =>
      value === 0 ? draw() : value * (0.5 + draw() / 2),
    ),
    parameters: Float64Array.from(model.parameters, ({ band: { low, high } }) => low + (high - low) * draw()),
  }
}
