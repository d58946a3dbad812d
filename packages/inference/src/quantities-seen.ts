import { coverOf, type Model, patches, patchShare, stateIndex } from '@holdfast/ecosystem'
import { convert } from '@holdfast/quantities'

/** Something that can be read in the tank, worked out from the states and parameters of a member. */
export interface Seen {
  readonly quantity: 'nitrate' | 'phosphate' | 'ammonia' | 'nitrite' | 'cover' | 'media load'
  readonly surface?: string
  readonly algae?: string
  readonly of: (states: Float64Array, parameters: Float64Array) => number
}

/** Everything that can be read in this system, in the units of readings, and what the media hold. */
export function seenIn(model: Model): readonly Seen[] {
  return [...waterOf(model), ...coversOf(model), ...mediaOf(model)]
}

function waterOf(model: Model): readonly Seen[] {
  const dissolved = (quantity: Seen['quantity'], id: string, unit: string): Seen => {
    const index = stateIndex(model, id)
    const factor = convert(1, 'µmol L⁻¹', unit) / model.volume_L
    return { quantity, of: (states) => Math.max(0, states[index] * factor) }
  }
  return [
    dissolved('nitrate', 'water.nitrate/N', 'mg NO3 L⁻¹'),
    dissolved('phosphate', 'water.phosphate/P', 'mg PO4 L⁻¹'),
    dissolved('ammonia', 'water.ammonia/N', 'mg N L⁻¹'),
    dissolved('nitrite', 'water.nitrite/N', 'mg NO2 L⁻¹'),
  ]
}

/** Phosphorus that the ferric media hold, mg. */
function mediaOf(model: Model): readonly Seen[] {
  if (!model.system.equipment.some(({ kind }) => kind === 'ferric media reactor')) return []
  const index = stateIndex(model, 'media.ferric/P')
  const factor = convert(1, 'µmol', 'mg P')
  return [{ quantity: 'media load', of: (states) => Math.max(0, states[index] * factor) }]
}

function coversOf(model: Model): readonly Seen[] {
  const { system } = model
  const kinds = [...new Set(system.algae.map(({ kind }) => kind))]
  return system.surfaces.flatMap((surface) =>
    kinds.map((algae): Seen => {
      const parts = patches.map((patch) => ({
        coverOn: coverOf(model, { surface: surface.id, kind: algae, patch }),
        share: patchShare(surface, patch, model.facts),
      }))
      const of: Seen['of'] = (states, parameters) =>
        Math.min(
          1,
          Math.max(
            0,
            parts.reduce((sum, { coverOn, share }) => sum + share * coverOn(states, parameters), 0),
          ),
        )
      return { quantity: 'cover', surface: surface.id, algae, of }
    }),
  )
}
