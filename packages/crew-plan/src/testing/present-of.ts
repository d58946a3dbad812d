import { assemble, type Opening, type System, settingsOn, startOf, timeline } from '@holdfast/ecosystem'
import type { FactsOfSystem } from '@holdfast/facts'
import type { Present } from '../question.ts'

/** The first day of a system that is told and has no log, at the typical values of its facts. */
export function presentOf(
  system: System,
  opening: Opening = { nitrate_mg_L: 8, phosphate_mg_L: 0.06 },
  facts?: FactsOfSystem,
): Present {
  const model = assemble(system, facts)
  const routine: Present['routine'] = (to) =>
    timeline({ system, facts: model.facts, events: [], from: 0, to, asOf: 0 })
  const parameters = Float64Array.from(model.parameters, ({ band }) => band.typical)
  const states = startOf(model, parameters, opening, 0)
  const settings = settingsOn(model, routine(1), 0)
  return { model, day: 0, worlds: [{ parameters, states, settings }], weights: [1], routine }
}
