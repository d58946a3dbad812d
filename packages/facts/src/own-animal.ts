import { algaeKinds } from './algae-kind.ts'
import type { Fact } from './fact.ts'
import { type Grazer, grazer, grazers } from './grazer.ts'
import { consumptionId, factsOfGrazer } from './grazer-facts.ts'
import { type Taste, taste } from './taste.ts'
import { nearestKeys } from './unknown-key.ts'

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
  /** Inner length of the vessel from which on it may be kept, in the place of what the rules say. */
  readonly least_length_cm?: number
  /** It lives between these. */
  readonly coldest_C?: number
  readonly warmest_C?: number
  readonly reef_safe?: Grazer['reefSafe']
  /** What there is to mind; one that was safe is then so with caution. */
  readonly caution?: string
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
  /** What cannot be used. */
  readonly issues: readonly OwnAnimalIssue[]
}

/** What of an animal of the keeper's own cannot be used; `where` counts from 1, as the system file is spoken of. */
export interface OwnAnimalIssue {
  readonly code: 'unknown-like' | 'name-taken' | 'unknown-food' | 'temperatures-cross'
  readonly taxon: string
  readonly where: string
  readonly got: string
  readonly accepted: string
  readonly next: string
}

/** The catalogue's animals alone. */
export const catalogueAnimals: KnownAnimals = { grazers, grazer, taste }

const foods: ReadonlySet<string> = new Set([...algaeKinds().map(({ key }) => key), 'detritus'])

/** Adds the keeper's own animals to those of the catalogue. What cannot be used is left out and told. */
export function withOwnAnimals(given: readonly OwnAnimal[]): OwnAnimalsRead {
  if (given.length === 0) return { ...catalogueAnimals, facts: new Map(), issues: [] }
  const own = new Map<string, { readonly told: OwnAnimal; readonly animal: Grazer }>()
  const issues: OwnAnimalIssue[] = []
  const taken = new Set(grazers().map(({ taxon }) => consumptionId(taxon)))
  given.forEach((told, i) => {
    const id = consumptionId(told.taxon)
    const place = `own animals ${i + 1}`
    const like = grazer(told.like)
    if (!like) issues.push(noLike(told, `${place}, like`))
    if (taken.has(id)) issues.push(nameTaken(told, `${place}, taxon`))
    const crossed = like && temperaturesCross(told, like, `${place}, warmest`)
    if (crossed) issues.push(crossed)
    if (like && !crossed && !taken.has(id)) own.set(told.taxon, { told, animal: madeOf(told, like) })
    taken.add(id)
    for (const kind of Object.keys(told.tastes ?? {}))
      if (!foods.has(kind)) issues.push(noFood(told, kind, `${place}, tastes, ${kind}`))
  })
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
    issues,
  }
}

function noLike({ taxon, like }: OwnAnimal, where: string): OwnAnimalIssue {
  const nearest = nearestKeys(
    like,
    grazers().map((one) => one.taxon),
  )
  return {
    code: 'unknown-like',
    taxon,
    where,
    got: `"${like}" is no grazer of the catalogue`,
    accepted: `The nearest are ${nearest.join(', ')}.`,
    next: 'Name the one that it lives most like.',
  }
}

const nameTaken = ({ taxon }: OwnAnimal, where: string): OwnAnimalIssue => ({
  code: 'name-taken',
  taxon,
  where,
  got: `"${taxon}" is the name of another`,
  accepted: 'A name that neither the catalogue nor another animal of yours has.',
  next: 'Give it another name, there and in the log.',
})

const noFood = ({ taxon }: OwnAnimal, kind: string, where: string): OwnAnimalIssue => ({
  code: 'unknown-food',
  taxon,
  where,
  got: `"${kind}" is no food of the catalogue`,
  accepted: `One of ${[...foods].join(', ')}.`,
  next: 'Take the kind that comes nearest.',
})

function temperaturesCross(told: OwnAnimal, like: Grazer, where: string): OwnAnimalIssue | undefined {
  const { coldest_C: coldest = like.temperature_C.min, warmest_C: warmest = like.temperature_C.max } = told
  if (coldest < warmest) return undefined
  return {
    code: 'temperatures-cross',
    taxon: told.taxon,
    where,
    got: `it would live from ${coldest} °C on and to ${warmest} °C`,
    accepted: 'A warmest above the coldest; what you do not tell is as with the one it is like.',
    next: 'Tell both.',
  }
}

/** An issue as a sentence beside an answer. */
export const ownAnimalRemark = ({ taxon, where, got, accepted, next }: OwnAnimalIssue): string =>
  `What you told of your own animal ${taxon} is not used (${where}): ${got}. ${accepted} ${next}`

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
  const { min, best, max } = model.temperature_C
  const { coldest_C: coldest = min, warmest_C: warmest = max } = told
  const reefSafe =
    told.reef_safe ??
    (told.caution !== undefined && model.reefSafe === 'yes' ? 'with caution' : model.reefSafe)
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
    temperature_C: { min: coldest, best: Math.min(Math.max(best, coldest), warmest), max: warmest },
    reefSafe,
    reefSafeReason: told.caution ?? model.reefSafeReason,
    ...(told.least_length_cm === undefined ? {} : { leastLength_cm: told.least_length_cm }),
    price_usd: told.price_usd === undefined ? model.price_usd : { low: told.price_usd, high: told.price_usd },
    ...(told.eats_g_per_day === undefined
      ? {}
      : { consumptionNote: own, consumptionSources: ['holdfast-estimate'] }),
  }
}
