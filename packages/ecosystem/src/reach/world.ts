import type { Model } from '../assemble/model.ts'
import { stateId } from '../assemble/model.ts'

/** One way the system may be today: a member of an ensemble, or the catalogue's typical values. */
export interface World {
  readonly parameters: Float64Array
  readonly states: Float64Array
  readonly settings: Float64Array
}

/**
 * The same day in another model of the same system, such as one with more animals: what both have is carried
 * over, what only the new one has stands as its description and its facts say, and its accounts hold nothing.
 */
export function carriedOver(from: Model, world: World, to: Model): World {
  const states = numbered(from.states.map(stateId))
  const settings = numbered(from.settings.ids)
  const parameters = numbered(from.parameters.map(({ id, unit }) => `${id} ${unit}`))
  const take = (index: number | undefined, values: Float64Array, otherwise: number): number =>
    index === undefined ? otherwise : values[index]
  return {
    states: Float64Array.from(to.states, (entry) => take(states.get(stateId(entry)), world.states, 0)),
    settings: Float64Array.from(to.settings.ids, (id, k) =>
      take(settings.get(id), world.settings, to.settings.values[k]),
    ),
    parameters: Float64Array.from(to.parameters, ({ id, unit, band }) =>
      take(parameters.get(`${id} ${unit}`), world.parameters, band.typical),
    ),
  }
}

const numbered = (ids: readonly string[]): ReadonlyMap<string, number> =>
  new Map(ids.map((id, index) => [id, index]))

/** The parameter that a fact has in a world; the catalogue's typical value where no formula of the model reads it. */
export function parameterOf(model: Model, { parameters }: World, fact: string): number {
  const index = model.parameters.findIndex((one) => one.fact === fact)
  return index < 0 ? model.facts.typical(fact) : parameters[index]
}
