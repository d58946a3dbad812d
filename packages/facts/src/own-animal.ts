import { algaeKinds } from './algae-kind.ts'
import type { Fact } from './fact.ts'
import { type Grazer, grazer, grazers } from './grazer.ts'
import { consumptionId, factsOfGrazer } from './grazer-facts.ts'
import { type Taste, taste } from './taste.ts'

/**
 * An animal of the keeper's own, which the catalogue does not have: like one that it has, but for what is told. It
 * keeps company, hunts and is hunted as that one does.
 */
export interface OwnAnimal {
  /** What the keeper and the log call it; no taxon of the catalogue. */
  readonly taxon: string
  /** Taxon of the catalogue that it is like. */
  readonly like: string
  readonly adult_size_cm?: number
  /** Live mass of one grown; what it eats and needs goes with it where those are not told. */
  readonly wet_mass_g?: number
  /** What a hungry grown one eats with algae only, g dry d⁻¹. */
  readonly eats_g_per_day?: number
  /** Least food that keeps it from losing mass, g dry d⁻¹. */
  readonly needs_g_per_day?: number
  /** Nominal inner volume of the vessel from which on it may be kept, L. */
  readonly least_volume_L?: number
  /** Share lost in a year of a well-run tank, 0 to under 1. */
  readonly lost_in_a_year?: number
  /** US dollars. */
  readonly price_usd?: number
  /** How willingly it eats a kind of algae or detritus, 0 to 1. */
  readonly tastes?: Readonly<Record<string, number>>
}

/** The animals that are known of: those of the catalogue, and the keeper's own. */
export interface KnownAnimals {
  /** All grazers, the keeper's own last. */
  readonly grazers: () => readonly Grazer[]
  readonly grazer: (taxon: string) => Grazer | undefined
  /** As `taste`, with the keeper's own. */
  readonly taste: (taxon: string, kind: string) => Taste
}

export interface OwnAnimalsRead extends KnownAnimals {
  /** What formulas read of the keeper's own, by id. */
  readonly facts: ReadonlyMap<string, Fact>
  /** A sentence for each that cannot be used. */
  readonly remarks: readonly string[]
}

/** The catalogue's animals alone. */
export const catalogueAnimals: KnownAnimals = { grazers, grazer, taste }

const foods: ReadonlySet<string> = new Set([...algaeKinds().map(({ key }) => key), 'detritus'])

/** Adds the keeper's own animals to those of the catalogue. What cannot be used is left out and said. */
export function withOwnAnimals(given: readonly OwnAnimal[]): OwnAnimalsRead {
  if (given.length === 0) return { ...catalogueAnimals, facts: new Map(), remarks: [] }
  const own = new Map<string, { readonly told: OwnAnimal; readonly animal: Grazer }>()
  const remarks: string[] = []
  const taken = new Set(grazers().map(({ taxon }) => consumptionId(taxon)))
  for (const told of given) {
    const model = grazer(told.like)
    const id = consumptionId(told.taxon)
    const notUsed = `Your own animal ${told.taxon} is not used:`
    if (!model) remarks.push(`${notUsed} the catalogue has no ${told.like} that it could be like.`)
    else if (taken.has(id)) remarks.push(`${notUsed} there is one of that name already.`)
    else {
      taken.add(id)
      own.set(told.taxon, { told, animal: madeOf(told, model) })
      const strange = Object.keys(told.tastes ?? {}).filter((kind) => !foods.has(kind))
      if (strange.length > 0)
        remarks.push(
          `What your own animal ${told.taxon} eats of ${strange.join(', ')} is not used: the catalogue has these: ${[...foods].join(', ')}.`,
        )
    }
  }
  const all = [...grazers(), ...[...own.values()].map(({ animal }) => animal)]
  return {
    grazers: () => all,
    grazer: (taxon) => own.get(taxon)?.animal ?? grazer(taxon),
    taste: (taxon, kind) => {
      const told = own.get(taxon)?.told
      return told ? tasteOf(told, kind) : taste(taxon, kind)
    },
    facts: new Map(
      [...own.values()].flatMap(({ animal }) => factsOfGrazer(animal)).map((fact) => [fact.id, fact]),
    ),
    remarks,
  }
}

function tasteOf({ like, tastes = {} }: OwnAnimal, kind: string): Taste {
  const catalogue = taste(like, kind)
  const preference = tastes[kind]
  return preference === undefined
    ? catalogue
    : { preference, source: 'holdfast-estimate', provenance: 'estimate', confidence: 'low', note: own }
}

const own = "The keeper's own figure"

function madeOf(told: OwnAnimal, model: Grazer): Grazer {
  const {
    taxon,
    like,
    adult_size_cm: adultSize_cm = model.adultSize_cm,
    wet_mass_g: wetMass_g = model.wetMass_g,
    lost_in_a_year: annualMortality = model.annualMortality,
  } = told
  const byMass = wetMass_g / model.wetMass_g
  const { low, typical, high } = model.consumption
  const eats = told.eats_g_per_day ?? typical * byMass
  const least = told.least_volume_L
  return {
    ...model,
    taxon,
    like,
    tradeName: taxon,
    adultSize_cm,
    wetMass_g,
    annualMortality,
    // As uncertain as that of the one it is like.
    consumption:
      eats === typical
        ? model.consumption
        : { low: (low / typical) * eats, typical: eats, high: (high / typical) * eats },
    feedNeed: told.needs_g_per_day === undefined ? model.feedNeed : told.needs_g_per_day / wetMass_g,
    volume_L:
      least === undefined
        ? model.volume_L
        : { least, comfortable: Math.max(least, model.volume_L.comfortable) },
    price_usd: told.price_usd === undefined ? model.price_usd : { low: told.price_usd, high: told.price_usd },
    ...(told.eats_g_per_day === undefined
      ? {}
      : { consumptionNote: own, consumptionSources: ['holdfast-estimate'] }),
  }
}
