import { type FactsOfSystem, needId } from '@holdfast/facts'
import { livingOf, standAccount } from '../accounts/index.ts'
import { assemble } from '../assemble/assemble.ts'
import { type Model, stateIndex } from '../assemble/model.ts'
import { equationsOf } from '../simulate/equations-of.ts'
import type { Animals, System } from '../system.ts'
import { tasteAtHeight } from './taste-at-height.ts'
import { eatersOf, type PlaceWeek } from './week.ts'
import { carriedOver, parameterOf, type World } from './world.ts'

/** What one animal of a taxon takes in a day of what stands today. */
export interface Intake {
  readonly taxon: string
  /** Where there were nothing but what it likes best, as thick as its food stands today, g dry d⁻¹. */
  readonly appetite_g_d: number
  /** Algae that it eats, g dry d⁻¹. */
  readonly algae_g_d: number
  /** Settled waste that it eats, g dry d⁻¹. */
  readonly detritus_g_d: number
}

/**
 * What one grown animal of each taxon would eat today, read off the equations of a model that has one of each:
 * food is shared over stands and not over mouths, so that none of them makes a difference to another.
 *
 * @param places  the stands of today, for their height
 * @param vessel  in which those live that the description does not have
 */
export function intakes(
  model: Model,
  world: World,
  taxa: readonly string[],
  places: readonly PlaceWeek[],
  vessel?: string,
): readonly Intake[] {
  const trial = assemble(withOneOfEach(model, taxa, vessel), model.facts)
  const carried = carriedOver(model, world, trial)
  for (const taxon of taxa) carried.states[stateIndex(trial, livingOf(taxon).id)] = 1
  const rates = new Float64Array(trial.fluxes.length)
  equationsOf(trial, carried.parameters, carried.settings).rates(carried.states, rates)
  const eaten = new Map(taxa.map((taxon) => [taxon, { spent: 0, algae: 0, detritus: 0 }]))
  const stands = standsByCarbon(trial, places)
  for (const [flux, taxon] of eatersOf(trial)) {
    const sums = eaten.get(taxon)
    const place = stands.get(trial.fluxes[flux].from)
    if (!sums || !place || trial.fluxes[flux].atom !== 'C') continue
    const grams = rates[flux] / parameterOf(trial, carried, `algae.${place.kind}.tissue_C`)
    sums.algae += grams
    sums.spent += share(grams, tasteAtHeight(taxon, place.kind, place.height_mm, model.facts))
  }
  for (const [flux, taxon] of eatersOf(trial, 'detritus-feeding')) {
    const sums = eaten.get(taxon)
    if (!sums || trial.fluxes[flux].atom !== 'C') continue
    const grams = rates[flux] / parameterOf(trial, carried, 'grazing.detritus_carbon')
    sums.detritus += grams
    sums.spent += share(grams, model.facts.taste(taxon, 'detritus').preference)
  }
  return [...eaten].map(([taxon, { spent, algae, detritus }]) => ({
    taxon,
    appetite_g_d: spent,
    algae_g_d: algae,
    detritus_g_d: detritus,
  }))
}

const share = (part: number, whole: number): number => (whole > 0 ? part / whole : 0)

/** The same system with one animal of each taxon and no other grazer. */
function withOneOfEach({ system, facts }: Model, taxa: readonly string[], vessel?: string): System {
  const others = system.animals.filter(({ taxon }) => taxon === undefined || !facts.grazer(taxon))
  return {
    ...system,
    animals: [...others, ...taxa.flatMap((taxon) => oneOf(system, taxon, vessel))],
  }
}

/** One animal of a taxon, at home where those of it are that live there. */
function oneOf({ animals }: System, taxon: string, vessel?: string): readonly Animals[] {
  const known = animals.filter((one) => one.taxon === taxon)
  const at = known.length > 0 ? known.map((one) => one.vessel) : [vessel]
  return at.map((home, k) => ({
    ...{ kind: taxon, taxon, count: k === 0 ? 1 : 0, role: 'grazer' },
    ...(home === undefined ? {} : { vessel: home }),
  }))
}

function standsByCarbon(model: Model, places: readonly PlaceWeek[]): ReadonlyMap<number, PlaceWeek> {
  return new Map(places.map((place) => [stateIndex(model, `${standAccount(place).id}/C`), place]))
}

/** Need of one grown animal of a taxon that prepared food does not cover, g dry d⁻¹. */
export function needLeft(
  taxon: string,
  { feeds }: Pick<System, 'feeds'>,
  { typical, grazer }: FactsOfSystem,
): number {
  const animal = grazer(taxon)
  if (!animal) return 0
  const fed = feeds.some(({ g_per_day }) => g_per_day > 0)
  return typical(needId(taxon)) * (1 - (fed ? typical(`crew.prepared.${animal.appetite}`) : 0))
}
