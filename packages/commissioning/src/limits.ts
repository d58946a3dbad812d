import { coralBand, coralBands, type FactsOfSystem } from '@holdfast/facts'
import type { Limit } from './answer.ts'

/** Limits of the first animals, each a fact of the catalogue or the keeper's own value of it. */
export interface Limits {
  readonly ammonia: Limit
  readonly unIonised: Limit
  readonly nitrite: Limit
  readonly quiet: Limit
  readonly challenge: Limit
  readonly challengeDays: Limit
  readonly curedNitrate: Limit
  readonly curedPhosphate: Limit
  readonly curedDays: Limit
  readonly nitrate: Limit
  readonly phosphate: Limit
}

/** @param corals the kind that is to be kept; a mixed reef where nothing is said */
export function limitsOf(facts: FactsOfSystem, corals: string | undefined): Limits {
  const at = (fact: string, unit: string, end: 'low' | 'typical' | 'high' = 'typical'): Limit => ({
    value: facts.fact(fact)[end],
    unit,
    fact,
  })
  const band = (corals === undefined ? undefined : coralBand(corals)) ?? coralBands()[0]
  return {
    ammonia: at('commissioning.ammonia', 'mg/L N'),
    unIonised: at('crew_plan.ammonia', 'mg/L N'),
    nitrite: at('commissioning.nitrite', 'mg/L NO2'),
    quiet: at('commissioning.quiet', 'days'),
    // A smaller dose shows too little; the usual one is what the plan gives.
    challenge: at('commissioning.challenge', 'mg/L N', 'low'),
    challengeDays: at('commissioning.challenge_days', 'days'),
    curedNitrate: at('commissioning.cured.nitrate', 'mg/L NO3'),
    curedPhosphate: at('commissioning.cured.phosphate', 'mg/L PO4'),
    curedDays: at('commissioning.cured.days', 'days'),
    nitrate: at(band.nitrate, 'mg/L NO3', 'high'),
    phosphate: at(band.phosphate, 'mg/L PO4', 'high'),
  }
}
