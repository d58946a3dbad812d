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

/** The consumption of each taxon, in the order of the grazers. */
export const grazerFacts: readonly Fact[] = grazers().map(consumption)
