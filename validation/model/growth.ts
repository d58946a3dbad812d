/** How an algae kind grows at a surface today, and what becomes of it. */
import {
  equationsOf,
  type Model,
  patches,
  simulate,
  standAccount,
  stateIndex,
  timeline,
} from '@holdfast/ecosystem'
import { fact } from '@holdfast/facts'
import type { CaseFile } from '../case-file.ts'
import { median } from './courses.ts'
import { presentOf, withAlgae } from './past-of-case.ts'

/** Days after which a growth or a loss that a survey can see should show. */
const shows = 14

/** Growth of the stands before grazing, d⁻¹ of their carbon, and what their cover gains in two weeks, 0 where no survey would see it. */
export function growth(file: CaseFile, surface: string, algae: string) {
  const { known, question } = presentOf(withAlgae(file, surface, algae))
  const { model } = known
  const stands = standsOf(model, surface, algae)
  const rates = new Float64Array(model.fluxes.length)
  const cover = known.seen.find(
    (seen) => seen.quantity === 'cover' && seen.surface === surface && seen.algae === algae,
  )
  const to = question.asOf + shows
  const moments = timeline({ ...question, system: model.system, from: question.asOf, to })
  const each = known.members.map(({ parameters, states, settings }) => {
    equationsOf(model, parameters, settings).rates(states, rates)
    const held = stands.reduce((sum, index) => sum + (states[index] ?? 0), 0)
    const grown = model.fluxes.reduce(
      (sum, { process, to: into }, k) =>
        process.id.startsWith('algal-growth') && stands.includes(into) ? sum + (rates[k] ?? 0) : sum,
      0,
    )
    const { end } = simulate({
      model,
      parameters,
      start: states,
      settings,
      from: question.asOf,
      to,
      timeline: moments,
    })
    return { gross: grown / held, net: cover ? cover.of(end, parameters) - cover.of(states, parameters) : 0 }
  })
  const of = (key: 'gross' | 'net') =>
    median(
      each.map((one) => one[key]),
      known.weights.of,
    )
  const net = of('net')
  return { gross: of('gross'), net: Math.abs(net) < fact('survey.cover.error').typical ? 0 : net }
}

function standsOf(model: Model, surface: string, algae: string): readonly number[] {
  return patches
    .map((patch) => stateIndex(model, `${standAccount({ surface, kind: algae, patch }).id}/C`))
    .filter((index) => index >= 0)
}
