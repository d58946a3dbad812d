import type { FactsOfSystem } from '@holdfast/facts'
import { carbonMassSetting } from '../processes/activated-carbon.ts'
import { carbonDosingOf, carbonIn, dosedCarbonSetting } from '../processes/carbon-dosing.ts'
import { continuousChangeSetting } from '../processes/continuous-water-change.ts'
import { reactorSetting, reactorsOf } from '../processes/denitrifying-reactor.ts'
import { ferricFlowSetting, ferricMassSetting, ferricRunningSetting } from '../processes/ferric-media.ts'
import {
  airSetting,
  cupSetting,
  foamByAir,
  foamByCup,
  type Running,
  runningSetting,
  skimmersOf,
  strengthSetting,
} from '../processes/foam-fractionation.ts'
import { filtersOf, meshSetting } from '../processes/mechanical-filters.ts'
import { lanthanum, lanthanumSetting } from '../processes/phosphate-binding.ts'
import { volumeOf } from '../processes/readings.ts'
import { lampsOf, ultravioletSetting } from '../processes/ultraviolet.ts'
import type { System } from '../system.ts'
import type { Values } from './moment.ts'

type Answer = (value: number, system: System, facts: FactsOfSystem) => Values

/** All of a kind alike: the log names the kind. */
const each = (count: number, id: (index: number) => string, value: number): Values =>
  Object.fromEntries(Array.from({ length: count }, (_, index) => [id(index), value]))

const ofSkimmers = (
  system: System,
  id: (index: number) => string,
  value: (running: Running) => number,
): Values => Object.fromEntries(skimmersOf(system).map(({ of }) => [id(of.index), value(of)]))

/** What a changed key of a kind of equipment sets. A key that is not here changes nothing by itself. */
const answers: Readonly<Record<string, Readonly<Record<string, Answer>>>> = {
  skimmer: {
    running: (value, system) => each(skimmersOf(system).length, runningSetting, value),
    rated_for_L: (value, system) =>
      each(skimmersOf(system).length, strengthSetting, value / volumeOf(system)),
    air_L_per_hour: (value, system, facts) =>
      ofSkimmers(system, airSetting, (running) => foamByAir(running, value, facts)),
    cup_emptied_every_days: (value, system, facts) =>
      ofSkimmers(system, cupSetting, (running) => foamByCup(running, value, facts)),
  },
  'filter floss': { mesh_um: (value, system) => each(filtersOf(system).length, meshSetting, value) },
  'filter sock': { mesh_um: (value, system) => each(filtersOf(system).length, meshSetting, value) },
  'ferric media reactor': {
    running: (value) => ({ [ferricRunningSetting]: value }),
    mass_g: (value) => ({ [ferricMassSetting]: value }),
    flow_L_per_hour: (value) => ({ [ferricFlowSetting]: 24 * value }),
  },
  'activated carbon': { mass_g: (value) => ({ [carbonMassSetting]: value }) },
  'organic carbon dosing': {
    mL_per_day: (value, system, facts) => ({
      [dosedCarbonSetting]: carbonIn(carbonDosingOf(system)?.substance ?? 'ethanol', value, facts),
    }),
    mL_ethanol_per_day: (value, _, facts) => ({ [dosedCarbonSetting]: carbonIn('ethanol', value, facts) }),
  },
  'continuous water change': { L_per_day: (value) => ({ [continuousChangeSetting]: value }) },
  'phosphate binder': { La_mg_per_day: (value) => ({ [lanthanumSetting]: lanthanum(value) }) },
  'denitrifying reactor': {
    media_L: (value, system) => each(reactorsOf(system).length, reactorSetting('media'), value),
    flow_L_per_hour: (value, system) => each(reactorsOf(system).length, reactorSetting('flow'), 24 * value),
  },
  'ultraviolet lamp': {
    flow_L_per_hour: (value, system) =>
      each(lampsOf(system).length, ultravioletSetting, (24 * value) / volumeOf(system)),
  },
}

/** Settings that a change of equipment in the log moves; yes counts as 1 and no as 0. */
export function equipmentSettings(
  equipment: string,
  changes: Readonly<Record<string, unknown>>,
  system: System,
  facts: FactsOfSystem,
): Values {
  return Object.assign(
    {},
    ...Object.entries(changes).map(([key, value]) => {
      const number = typeof value === 'boolean' ? Number(value) : value
      return typeof number === 'number' ? answers[equipment]?.[key]?.(number, system, facts) : undefined
    }),
  )
}
