import {
  assemble,
  coverOf,
  type Event,
  type Model,
  type Opening,
  patches,
  patchShare,
  type Simulation,
  type System,
  simulate,
  startOf,
  stateIndex,
  timeline,
  typicalParameters,
} from '@holdfast/ecosystem'
import { pow } from '@holdfast/elementary'
import { drawMember } from '@holdfast/inference'
import { convert } from '@holdfast/quantities'

/** What nobody in the story knows: how this tank's facts lie in their bands, and where its water began. */
export interface Tank {
  readonly seed: number
  readonly member: number
  /** How far the tank lies from the typical one to the one drawn: 0 is typical, 1 as drawn. */
  readonly distance: number
  /** Facts set by hand instead of drawn, in the unit of the formulas. */
  readonly facts: Readonly<Record<string, number>>
  readonly opening: Opening
}

/** What a perfect reading would say. */
export interface Truth {
  readonly day: number
  readonly nitrate_mg_L: number
  readonly phosphate_mg_L: number
  readonly cover: (surface: string, algae: string) => number
}

/** The invented time as it was, on the days asked for (in order). */
export function truthOf(
  system: System,
  events: readonly Event[],
  from: number,
  days: readonly number[],
  tank: Tank,
): readonly Truth[] {
  const to = days[days.length - 1] ?? from
  const { samples } = runOf(system, events, { from, to, samples: days }, tank)
  const model = assemble(system)
  const parameters = parametersOf(model, tank)
  return samples.map((states, i) => truthAt(model, parameters, states, days[i]))
}

/** Typical values, moved towards those of the member drawn; facts set by hand as they are. */
function parametersOf(model: Model, { seed, member, distance, facts }: Tank): Float64Array {
  const typical = typicalParameters(model)
  return drawMember(model, seed, member).map(
    (value, i) => facts[model.parameters[i].fact] ?? between(typical[i], value, distance),
  )
}

/** What is wanted of a run: from one day to another, states on days in between, sums between marks. */
export interface Wanted {
  readonly from: number
  readonly to: number
  readonly samples: readonly number[]
  readonly marks?: readonly number[]
}

/** The tank as it truly ran. */
export function runOf(system: System, events: readonly Event[], wanted: Wanted, tank: Tank): Simulation {
  const model = assemble(system)
  const parameters = parametersOf(model, tank)
  const { from, to } = wanted
  return simulate({
    ...wanted,
    model,
    parameters,
    start: startOf(model, parameters, tank.opening, from),
    timeline: timeline({ system, events, from, to, asOf: to }),
  })
}

/** On the scale of logarithms, where both are above zero. */
const between = (typical: number, drawn: number, distance: number): number =>
  typical > 0 && drawn > 0 ? typical * pow(drawn / typical, distance) : typical

function truthAt(model: Model, parameters: Float64Array, states: Float64Array, day: number): Truth {
  const dissolved = (id: string, unit: string): number =>
    convert(states[stateIndex(model, id)] / model.volume_L, 'µmol L⁻¹', unit)
  return {
    day,
    nitrate_mg_L: dissolved('water.nitrate/N', 'mg NO3 L⁻¹'),
    phosphate_mg_L: dissolved('water.phosphate/P', 'mg PO4 L⁻¹'),
    cover: (id, kind) => {
      const surface = model.system.surfaces.find((one) => one.id === id)
      if (!surface) throw new Error(`The system has no surface "${id}".`)
      return patches.reduce(
        (sum, patch) =>
          sum +
          patchShare(surface, patch, model.facts) *
            coverOf(model, { surface: id, kind, patch })(states, parameters),
        0,
      )
    },
  }
}
