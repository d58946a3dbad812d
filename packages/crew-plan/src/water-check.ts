import { mayBeStartingUp } from '@holdfast/commissioning/age'
import { type Model, stateIndex, unIonisedAmmonia_mg_N_L, water } from '@holdfast/ecosystem'
import { convert } from '@holdfast/quantities'
import { pH, unIonisedAmmoniaFraction } from '@holdfast/seawater'
import type { PlanIssue } from './answer.ts'
import { middle } from './middle.ts'
import type { Present } from './question.ts'

/** pH of a system that does not tell it; on the high side, where more of the ammonia is poisonous. */
const usualPH = 8.3

/**
 * Whether an animal may be added today: not while ammonia or nitrite may stand above the limits. A reading above
 * them counts where the model expects less, for it never foresees what has gone wrong.
 */
export function waterForbids({ model, worlds, read }: Present): PlanIssue | undefined {
  const modelled = waterIssue(
    model,
    worlds.map(({ states }) => states),
    'Water',
  )
  if (modelled !== undefined || read === undefined) return modelled
  const { pH: told = usualPH, salinity_psu, temperature_C } = model.system
  const { ammonia = 0, nitrite = 0 } = read
  const poison = ammonia * unIonisedAmmoniaFraction(pH('total', told), salinity_psu, temperature_C)
  return issueAbove(model, { ammonia: poison, nitrite }, 'Water')
}

/**
 * The same of the states that the water may be in on a day: of a system that may be starting up in any of them, of an
 * old one in the middle, since a few draws of the priors keep nitrite for ever, which no old tank does.
 */
export function waterIssue(
  model: Model,
  worlds: readonly Float64Array[],
  where: string,
): PlanIssue | undefined {
  const { pH: told = usualPH } = model.system
  const isYoung = mayBeStartingUp(model.system, { from: 0, asOf: 0 })
  const weights = worlds.map(() => 1)
  const mayBe = (each: readonly number[]): number =>
    isYoung ? Math.max(...each) : middle({ weights }, (w) => each[w])
  const ammonia = mayBe(worlds.map((states) => unIonisedAmmonia_mg_N_L(model, states, pH('total', told))))
  const nitriteAt = stateIndex(model, `${water.nitrite.id}/N`)
  const nitrite = mayBe(
    worlds.map((states) => convert(states[nitriteAt] / model.volume_L, 'µmol L⁻¹', 'mg NO2 L⁻¹')),
  )
  return issueAbove(model, { ammonia, nitrite }, where)
}

function issueAbove(
  { facts: { typical } }: Model,
  { ammonia, nitrite }: { readonly ammonia: number; readonly nitrite: number },
  where: string,
): PlanIssue | undefined {
  const limits = { ammonia: typical('crew_plan.ammonia'), nitrite: typical('crew_plan.nitrite') }
  if (ammonia <= limits.ammonia && nitrite <= limits.nitrite) return undefined
  return {
    code: 'cycle unfinished',
    where,
    got: `may hold ${ammonia.toPrecision(2)} mg/L of un-ionised ammonia (as N) and ${nitrite.toPrecision(2)} mg/L of nitrite`,
    accepted: `at most ${limits.ammonia} and ${limits.nitrite} mg/L before an animal comes`,
    next: 'Wait until both read nothing for seven days, then ask again.',
  }
}
