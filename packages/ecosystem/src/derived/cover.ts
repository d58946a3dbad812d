import { type Stand, standAccount, standCover } from '../accounts/index.ts'
import { type Model, stateIndex } from '../assemble/model.ts'
import { filmCover, least } from '../forms/index.ts'
import { growthForm, patchShare } from '../processes/stands.ts'

/**
 * The share of its patch that a stand covers, from a member's states and parameters: that of a tufted kind is a
 * state, that of a film or crust follows from its mass.
 *
 * @throws Error where the system has no such surface
 */
export function coverOf(
  model: Model,
  stand: Stand,
): (states: Float64Array, parameters: Float64Array) => number {
  const form = growthForm(stand.kind)
  if (form === 'tufted') {
    const own = stateIndex(model, standCover(stand).id)
    return (states) => states[own]
  }
  const surface = model.system.surfaces.find(({ id }) => id === stand.surface)
  if (!surface) throw new Error(`The system has no surface "${stand.surface}".`)
  const area = surface.area_m2 * patchShare(surface, stand.patch, model.facts)
  const carbon = stateIndex(model, `${standAccount(stand).id}/C`)
  const place = (name: string): number =>
    model.parameters.findIndex(({ fact }) => fact === `algae.${stand.kind}.${name}`)
  const [content, full] = [place('tissue_C'), place('full_cover_mass')]
  return (states, parameters) => {
    const mass = Math.max(0, states[carbon]) / parameters[content]
    const most = area * parameters[full]
    return form === 'film' ? filmCover(mass, most) : least(mass / most, 1)
  }
}
