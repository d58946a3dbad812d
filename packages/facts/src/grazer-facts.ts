import type { Fact } from './fact.ts'
import { consumptionRules, type Grazer, grazers } from './grazer.ts'

/** Id of the fact that holds the consumption of a taxon, such as grazer.trochus_histrio.consumption. */
export function consumptionId(taxon: string): string {
  return `grazer.${taxon.toLowerCase().replaceAll('.', '').replaceAll(' ', '_')}.consumption`
}

const rules = new Map(consumptionRules().map((rule) => [rule.key, rule]))

function consumption(grazer: Grazer): Fact {
  const rule = rules.get(grazer.consumptionRule)
  const keys = grazer.consumptionSources ?? rule?.sources ?? []
  return {
    id: consumptionId(grazer.taxon),
    title: `${grazer.taxon}: dry algae eaten a day`,
    unit: 'g d⁻¹',
    ...grazer.consumption,
    source: keys[0],
    ...(keys.length > 1 ? { also: keys.slice(1) } : {}),
    provenance: grazer.provenance.consumption,
    holds: `one grown animal of ${grazer.wetMass_g} g, hungry, with algae only, at ${grazer.temperature_C.best} °C`,
    note: [rule?.text, grazer.consumptionNote].filter(Boolean).join('. '),
  }
}

/** Ids of the facts of a taxon beside its consumption. */
export const needId = (taxon: string): string => consumptionId(taxon).replace(/consumption$/, 'need')
export const mortalityId = (taxon: string): string =>
  consumptionId(taxon).replace(/consumption$/, 'mortality')

/** A number to ten digits, and a factor of two to either side. */
const twofold = (typical: number) => {
  const round = (value: number): number => Number(value.toPrecision(10))
  return { low: round(typical / 2), typical: round(typical), high: round(typical * 2) }
}

function need(grazer: Grazer): Fact {
  return {
    id: needId(grazer.taxon),
    title: `${grazer.taxon}: dry algae that keep it from losing mass`,
    unit: 'g d⁻¹',
    ...twofold(grazer.feedNeed * grazer.wetMass_g),
    source: 'holdfast-estimate',
    provenance: 'estimate',
    holds: `one grown animal of ${grazer.wetMass_g} g with algae only`,
    note: 'Estimate: the low end of what its like eat; a factor of two to either side.',
  }
}

/** A stock that turns over within the year goes at 3 a year. */
const rateOf = (annual: number): number => (annual >= 1 ? 3 : -Math.log(1 - annual)) / 365

function mortality(grazer: Grazer): Fact {
  return {
    id: mortalityId(grazer.taxon),
    title: `${grazer.taxon}: loss of grown animals`,
    unit: 'd⁻¹',
    ...twofold(rateOf(grazer.annualMortality)),
    source: 'keepers-practice',
    provenance: 'common practice',
    holds: 'well-run tank, after the first month, without hunger and predators',
    note: `A share of ${grazer.annualMortality} lost in a year; a factor of two to either side is ours.`,
  }
}

/** The numbers of one taxon. */
export function factsOfGrazer(one: Grazer): readonly Fact[] {
  return [consumption(one), need(one), mortality(one)]
}

/** The numbers of each taxon, in the order of the grazers. */
export const grazerFacts: readonly Fact[] = grazers().flatMap(factsOfGrazer)
