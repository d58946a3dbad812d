import { type Stand, standAccount } from '../accounts/index.ts'
import { type Model, stateIndex } from '../assemble/model.ts'
import { coverOf } from '../derived/cover.ts'
import type { Day } from '../log.ts'
import { standsOf } from '../processes/stands.ts'
import type { Moment } from '../simulate/moment.ts'
import { simulate } from '../simulate/simulate.ts'
import { parameterOf, type World } from './world.ts'

/** One kind of alga on one patch over a span of days, as the simulation has it. */
export interface PlaceWeek extends Stand {
  /** What grows, before anything is eaten or drifts off, g dry d⁻¹. */
  readonly growth_g_d: number
  /** What is eaten, by taxon, g dry d⁻¹. */
  readonly grazed_g_d: ReadonlyMap<string, number>
  /** On the first day of the span: dry mass, share of the patch that it covers, height. */
  readonly mass_g: number
  readonly cover: number
  readonly height_mm: number
}

export interface WeekQuestion {
  readonly model: Model
  readonly world: World
  readonly from: Day
  readonly to: Day
  /** What happens in the span; it may hold more. */
  readonly moments: readonly Moment[]
}

/** Growth and grazing of every stand over a span, read off the flows of a run through it. */
export function weekOf({ model, world, from, to, moments }: WeekQuestion): readonly PlaceWeek[] {
  const { marks } = simulate({
    model,
    parameters: world.parameters,
    start: world.states,
    settings: world.settings,
    from,
    to,
    timeline: moments.filter(({ day }) => day >= from && day < to),
    marks: [from, to],
  })
  return placesBetween(model, world, marks[0], marks[1])
}

/** The books of a run at one day, as `simulate` gives them. */
interface Books {
  readonly day: Day
  readonly states: Float64Array
  readonly flows: Float64Array
}

/** The same from the books at two days of one run. */
export function placesBetween(model: Model, world: World, first: Books, last: Books): readonly PlaceWeek[] {
  const days = last.day - first.day
  const gone = (flux: number): number => (last.flows[flux] - first.flows[flux]) / days
  const stands = standsOf(model.system).map(({ stand, surface }) => {
    const of = (fact: string): number => parameterOf(model, world, `algae.${stand.kind}.${fact}`)
    const carbon = stateIndex(model, `${standAccount(stand).id}/C`)
    const mass_g = first.states[carbon] / of('tissue_C')
    const cover = coverOf(model, stand)(first.states, world.parameters)
    const covered = area(model, world, surface.id, stand.patch) * Math.max(cover, 1e-6)
    const height_mm = (of('canopy_height') * mass_g) / (covered * of('full_cover_mass'))
    return { stand, carbon, perGram: of('tissue_C'), mass_g, cover, height_mm }
  })
  const byCarbon = new Map(
    stands.map((one) => [one.carbon, { growth: 0, grazed: new Map<string, number>() }]),
  )
  const eaters = eatersOf(model)
  for (const [flux, { process, from, to, atom }] of model.fluxes.entries()) {
    if (atom !== 'C') continue
    const into = byCarbon.get(to)
    if (into && process.id.startsWith('algal-growth')) into.growth += gone(flux)
    const outOf = byCarbon.get(from)
    const taxon = eaters.get(flux)
    if (outOf && taxon !== undefined) outOf.grazed.set(taxon, (outOf.grazed.get(taxon) ?? 0) + gone(flux))
  }
  return stands.map(({ stand, carbon, perGram, mass_g, cover, height_mm }) => {
    const { growth, grazed } = byCarbon.get(carbon) ?? { growth: 0, grazed: new Map<string, number>() }
    return {
      ...stand,
      growth_g_d: growth / perGram,
      grazed_g_d: new Map([...grazed].map(([taxon, carbonEaten]) => [taxon, carbonEaten / perGram])),
      mass_g,
      cover,
      height_mm,
    }
  })
}

/** Area of a patch in a world, m²; the settings of the model have it. */
function area({ settings }: Model, { settings: values }: World, surface: string, patch: string): number {
  return values[settings.ids.indexOf(`area ${surface} ${patch}`)]
}

/** Of each flux that is grazing, by which taxon. */
export function eatersOf(model: Model, process = 'grazing'): ReadonlyMap<number, string> {
  const block = model.blocks.find((one) => one.process.id === process)
  if (!block) return new Map()
  const fluxes = model.fluxes.filter((flux) => flux.process.id === process).length
  const each = fluxes / block.names.length
  return new Map(
    Array.from({ length: fluxes }, (_, k) => {
      const { taxon } = block.instances[Math.floor(k / each)] as { readonly taxon: string }
      return [block.firstFlux + k, taxon]
    }),
  )
}

/** Key of a place, such as 'glass open film_green'. */
export const placeKey = ({ surface, patch, kind }: Stand): string => `${surface} ${patch} ${kind}`
