import type { FactsOfSystem } from '@holdfast/facts'
import type { MechanicalFilter, System } from '../system.ts'
import { type InSystem, volumeOf } from './readings.ts'

/** A mechanical filter; `index` counts the filters of the system. */
export interface Filter extends InSystem {
  readonly filter: MechanicalFilter
  readonly index: number
}

const isFilter = (item: System['equipment'][number]): item is MechanicalFilter =>
  item.kind === 'filter floss' || item.kind === 'filter sock'

export const filtersOf = (system: System) =>
  system.equipment
    .filter(isFilter)
    .map((filter, index) => ({ name: `${filter.kind} ${index + 1}`, of: { system, filter, index } }))

/** Mesh of a filter, µm; where it is not told, that for which the share caught in a pass is tabled. */
export const meshOf = ({ filter }: Filter, facts: FactsOfSystem): number =>
  filter.mesh_um ?? facts.typical('mech.mesh')

/** Setting that holds the mesh of a filter, µm. */
export const meshSetting = (index: number): string => `filter ${index} mesh`

/** Times a day that the water goes from the display to the vessels beside it and back. */
export function passesOf(system: System, facts: FactsOfSystem): number {
  const flow = Math.max(0, ...system.flow.map(({ L_per_hour }) => L_per_hour))
  return flow > 0 ? (24 * flow) / volumeOf(system) : facts.typical('mech.passes')
}
