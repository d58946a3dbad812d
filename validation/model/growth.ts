/** How an algae kind grows at a surface today, and what holds it back. */
import { equationsOf, type Model, patches, standAccount, stateIndex } from '@holdfast/ecosystem'
import type { CaseFile } from '../case-file.ts'
import { median } from './courses.ts'
import { presentOf, withAlgae } from './past-of-case.ts'

/** d⁻¹ of the carbon of the stands: what grows, and what is left of it after grazing and shedding. */
export function growth(file: CaseFile, surface: string, algae: string) {
  const { known } = presentOf(withAlgae(file, surface, algae))
  const { model } = known
  const stands = standsOf(model, surface, algae)
  const rates = new Float64Array(model.fluxes.length)
  const each = known.members.map(({ parameters, states, settings }) => {
    equationsOf(model, parameters, settings).rates(states, rates)
    const held = stands.reduce((sum, index) => sum + (states[index] ?? 0), 0)
    let grown = 0
    let gained = 0
    model.fluxes.forEach(({ process, from, to, atom }, k) => {
      if (atom !== 'C') return
      const rate = (rates[k] ?? 0) * (Number(stands.includes(to)) - Number(stands.includes(from)))
      gained += rate
      if (process.id === 'algal-growth') grown += rate
    })
    return { gross: grown / held, net: gained / held }
  })
  const of = (key: 'gross' | 'net') =>
    median(
      each.map((one) => one[key]),
      known.weights.of,
    )
  return { gross: of('gross'), net: of('net') }
}

function standsOf(model: Model, surface: string, algae: string): readonly number[] {
  return patches
    .map((patch) => stateIndex(model, `${standAccount({ surface, kind: algae, patch }).id}/C`))
    .filter((index) => index >= 0)
}
