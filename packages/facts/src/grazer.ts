import rules from './data/consumption-rules.json' with { type: 'json' }
import list from './data/grazers.json' with { type: 'json' }
import type { Provenance, Range } from './fact.ts'
import type { MouthKey } from './mouth.ts'
import type { SurfaceKindKey } from './surface-kind.ts'

export type GrazerGroup =
  | 'snail'
  | 'snail_scavenger'
  | 'conch'
  | 'limpet'
  | 'chiton'
  | 'abalone'
  | 'sea_slug'
  | 'sea_hare'
  | 'hermit_crab'
  | 'crab'
  | 'shrimp_non_grazer'
  | 'urchin'
  | 'brittle_star'
  | 'sea_cucumber'
  | 'blenny'
  | 'goby'
  | 'tang'
  | 'rabbitfish'
  | 'dwarf_angelfish'
  | 'other_fish'
  | 'pod'

/** An animal of the trade that eats algae, or is bought because people think so. */
export interface Grazer {
  readonly taxon: string
  /** Of an animal of the keeper's own: the taxon of the catalogue that it is like. */
  readonly like?: string
  readonly tradeName: string
  readonly group: GrazerGroup
  /** Size of a grown trade animal in a tank. */
  readonly adultSize_cm: number
  readonly sizeMeasure: string
  /** Live mass at that size: molluscs with shell, hermits without the borrowed one. */
  readonly wetMass_g: number
  /** What a hungry grown animal eats at its best temperature with algae only, g dry d⁻¹. */
  readonly consumption: Range
  /** Key of the rule the figure was made by, see `consumptionRules`. */
  readonly consumptionRule: string
  readonly consumptionNote?: string
  /** Sources where the figure is the row's own. */
  readonly consumptionSources?: readonly string[]
  /** Share of eaten organic matter absorbed, 0 to 1; the rest is faeces. */
  readonly assimilationOrganic: number
  readonly assimilationNitrogen: number
  /** Least food of algae quality that keeps it from losing mass, g dry per g body and day. */
  readonly feedNeed: number
  /** Share lost in a year of a well-run tank after the first month, but for hunger and named predators; 1 where the stock turns over. */
  readonly annualMortality: number
  readonly mouth: MouthKey
  /** Ending of the fact grazing.appetite_left.<appetite>. */
  readonly appetite: 'algae_only' | 'fish' | 'blenny' | 'crustacean'
  /** Share of the area of that kind of surface the animal gets to within a week, 0 to 1. */
  readonly reach: Readonly<Record<SurfaceKindKey, number>>
  readonly temperature_C: { readonly min: number; readonly best: number; readonly max: number }
  /** Nominal inner volume of the vessel. */
  readonly volume_L: { readonly least: number; readonly comfortable: number }
  readonly volumeSource?: string
  /** Of an animal of the keeper's own: inner length of the vessel; of others the pair rules tell it. */
  readonly leastLength_cm?: number
  readonly stocking: Stocking
  /** Price band of the trade, US dollars, undated. */
  readonly price_usd: { readonly low: number; readonly high: number }
  /** Whether shops have it; what comes by itself is counted when there and never bought; what is had for a while is given back when its food is gone. */
  readonly offered: 'usually' | 'rarely' | 'for a while' | 'comes by itself' | 'as a culture'
  readonly activePeriod: string
  readonly hazards: readonly string[]
  readonly reefSafe: 'yes' | 'with caution' | 'no'
  readonly reefSafeReason: string
  readonly provenance: Readonly<
    Record<
      | 'size'
      | 'consumption'
      | 'assimilation'
      | 'reach'
      | 'temperature'
      | 'volume'
      | 'stocking'
      | 'safety'
      | 'price',
      Provenance
    >
  >
  readonly note?: string
}

/**
 * How many keepers have of it where it is the only one of its kind of mouth: by the water, by the sand or by
 * the tank; none of them where it is not advised. Like animals share the room.
 */
export interface Stocking {
  readonly per100L?: { readonly low: number; readonly high: number }
  readonly perSand_m2?: { readonly low: number; readonly high: number }
  readonly perTank?: number
  readonly words: string
}

/** How consumption of many taxa was made from their mass. */
export interface ConsumptionRule {
  readonly key: string
  readonly title: string
  readonly text: string
  readonly sources: readonly string[]
}

const all = list as readonly Grazer[]
const byTaxon = new Map(all.map((one) => [one.taxon, one]))

/** All grazers, in the order of the table: snails first, pods last. */
export const grazers = (): readonly Grazer[] => all

/** The grazer of a taxon as the catalogue spells it; undefined where it has none. */
export const grazer = (taxon: string): Grazer | undefined => byTaxon.get(taxon)

const fishes: ReadonlySet<GrazerGroup> = new Set([
  'blenny',
  'goby',
  'tang',
  'rabbitfish',
  'dwarf_angelfish',
  'other_fish',
])

/** Is a group one of fish. */
export const finned = (group: GrazerGroup): boolean => fishes.has(group)

/** The rules that figures of consumption were made by. */
export const consumptionRules = (): readonly ConsumptionRule[] => rules
