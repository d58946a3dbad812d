import { exp, ln } from '@holdfast/elementary'
import { convert } from '@holdfast/quantities'
import {
  type Patch,
  patches,
  rock,
  standAccount,
  standCover,
  storesAccount,
  water,
} from '../accounts/index.ts'
import { type Model, stateId, stateIndex } from '../assemble/model.ts'
import { freundlich, monod } from '../forms/index.ts'
import type { Day } from '../log.ts'
import { carbonDosingOf } from '../processes/carbon-dosing.ts'
import { ammoniaOxidisers, nitriteOxidisers } from '../processes/nitrifiers.ts'
import { type KindOfRock, withDeadMatter, withExchangeable, withNitrifiers } from '../processes/rock-kinds.ts'
import { growthForm, layerOf, patchShare } from '../processes/stands.ts'
import { grown, strength } from '../processes/unexplained-loss.ts'
import { simulateTogether } from '../simulate/simulate.ts'
import { timeline } from '../simulate/timeline.ts'
import type { Rock, System } from '../system.ts'
import { beds } from './beds.ts'
import { corals } from './corals.ts'
import { crew } from './crew.ts'

/** What the first readings say of the water. */
export interface Opening {
  readonly nitrate_mg_L: number
  readonly phosphate_mg_L: number
  readonly ammonia_mg_N_L?: number
  readonly nitrite_mg_L?: number
}

/** What the first day rests on and no formula reads. */
export const factsOfStart = {
  young: 'start.young',
  runIn: 'start.run_in',
  nitrifiers: 'start.nitrifiers',
  sandNitrifiers: 'nit.seed_aob',
  silicate: 'si.start',
  cells: 'start.cells',
  newCover: 'start.cover_new',
  oldCover: 'start.cover_old',
  screen: 'turf.standing',
} as const

const usual = ({ facts }: Model, what: keyof typeof factsOfStart): number => facts.typical(factsOfStart[what])

/** Takes the readings for the water's nitrate and phosphate; everything else stays. */
export function setWater(model: Model, states: Float64Array, opening: Opening): void {
  const put = (id: string, value: number, from: string): void => {
    const index = stateIndex(model, id)
    if (index >= 0) states[index] = convert(value, from, 'µmol L⁻¹') * model.volume_L
  }
  put(`${water.nitrate.id}/N`, opening.nitrate_mg_L, 'mg NO3 L⁻¹')
  put(`${water.phosphate.id}/P`, opening.phosphate_mg_L, 'mg PO4 L⁻¹')
  if (opening.ammonia_mg_N_L !== undefined) put(`${water.ammonia.id}/N`, opening.ammonia_mg_N_L, 'mg N L⁻¹')
  if (opening.nitrite_mg_L !== undefined) put(`${water.nitrite.id}/N`, opening.nitrite_mg_L, 'mg NO2 L⁻¹')
}

/** How long a system has run: as long as most of its rock has been in it, or the oldest of its surfaces. */
export const ageOf = (system: System): number =>
  Math.max(0, ageOfMost(system.rock), ...system.surfaces.map(({ age_days }) => age_days))

const parameter = (model: Model, parameters: Float64Array, fact: string): number => {
  const index = model.parameters.findIndex((entry) => entry.fact === fact)
  return index < 0 ? Number.NaN : parameters[index]
}

/** What a start is worked out from, beside the model: a member's parameters, and what the first readings say to it. */
export interface StartOf {
  readonly parameters: Float64Array
  readonly opening: Opening
}

/**
 * The states on the first day of a log. An old system has run in: its waste, nitrifiers and sorbed
 * phosphate are where its own husbandry brings them, and its water is what the first readings say.
 * A young one starts bare.
 */
export function startOf(
  model: Model,
  parameters: Float64Array,
  opening: Opening,
  firstDay: Day,
  settings?: Float64Array,
): Float64Array {
  return startsOf(model, [{ parameters, opening }], firstDay, settings)[0]
}

/** The same for several members. */
export function startsOf(
  model: Model,
  members: readonly StartOf[],
  firstDay: Day,
  settings?: Float64Array,
): readonly Float64Array[] {
  const age = ageOf(model.system)
  const old = age >= usual(model, 'young')
  const bare = members.map((member) => bareStart(model, member, old))
  if (!old) return bare
  const from = firstDay - Math.min(usual(model, 'runIn'), age)
  const { system, facts } = model
  const question = {
    model,
    from,
    to: firstDay,
    timeline: timeline({ system, facts, events: [], from, to: firstDay, asOf: from }),
    ...(settings ? { settings } : {}),
  }
  const runs = simulateTogether(
    question,
    members.map(({ parameters }, m) => ({ parameters, start: bare[m] })),
  )
  return runs.map(({ end }, m) => asFound(model, members[m], end))
}

/** Everything as far as readings and description tell it. */
function bareStart(model: Model, { parameters, opening }: StartOf, old: boolean): Float64Array {
  const y = new Float64Array(model.states.length)
  const put = putInto(model, y)
  setWater(model, y, opening)
  nitrifiers(model, parameters, put, old)
  leaching(model, parameters, put)
  put(`${water.silicate.id}/Si`, usual(model, 'silicate') * model.volume_L)
  bacteria(model, parameters, put)
  if (old) sorbed(model, parameters, opening, put)
  algae(model, parameters, put)
  beds(model, parameters, put)
  corals(model, parameters, put)
  crew(model, parameters, put)
  unexplained(model, parameters, opening, put)
  return y
}

/** Water, rock and algae as found on the first day; waste and nitrifiers as the run before it left them. */
function asFound(model: Model, { parameters, opening }: StartOf, end: Float64Array): Float64Array {
  const y = Float64Array.from(end)
  const put = putInto(model, y)
  setWater(model, y, opening)
  sorbed(model, parameters, opening, put)
  leaching(model, parameters, put)
  if (cells(model, y) < usual(model, 'cells')) bacteria(model, parameters, put)
  put('media.ferric/P', 0)
  algae(model, parameters, put)
  beds(model, parameters, put)
  crew(model, parameters, put)
  unexplained(model, parameters, opening, put)
  return y
}

/** Sets a state by its id, where the model has it. */
function putInto(model: Model, y: Float64Array): Put {
  const index = new Map(model.states.map((entry, i) => [stateId(entry), i]))
  return (id, value) => {
    const i = index.get(id)
    if (i !== undefined) y[i] = value
  }
}

type Put = (id: string, value: number) => void

/** What is not explained counts from the first day, grown to the water as it is then. */
function unexplained(model: Model, parameters: Float64Array, opening: Opening, put: Put): void {
  put(strength.nitrate.id, 1)
  put(strength.phosphate.id, 1)
  const phosphate = convert(opening.phosphate_mg_L, 'mg PO4 L⁻¹', 'µmol L⁻¹')
  put(grown.id, monod(phosphate, parameter(model, parameters, 'unexplained.half_phosphate')))
}

/** Age that at least half of the mass of rock has reached; 0 without rock. */
function ageOfMost(rock: readonly Rock[]): number {
  const half = rock.reduce((sum, { mass_kg }) => sum + mass_kg, 0) / 2
  let mass = 0
  for (const { age_days, mass_kg } of [...rock].sort((a, b) => b.age_days - a.age_days)) {
    mass += mass_kg
    if (mass >= half && mass > 0) return age_days
  }
  return 0
}

/** Nitrifiers of rock by its age and kind, and of sand by the age of the system. */
function nitrifiers(model: Model, parameters: Float64Array, put: Put, old: boolean): void {
  const of = (fact: string): number => parameter(model, parameters, fact)
  const { system } = model
  const settled = usual(model, 'nitrifiers')
  const shares = new Map(withNitrifiers(system).map(({ kind, by }) => [kind, of(by)]))
  const onRock = system.rock.reduce(
    (sum, { kind, mass_kg, age_days }) =>
      sum + mass_kg * (age_days >= usual(model, 'young') ? settled : (shares.get(kind) ?? 0)),
    0,
  )
  const onSand = (system.sand?.mass_kg ?? 0) * (old ? settled : usual(model, 'sandNitrifiers'))
  const area = onRock * of('nit.area.rock') + onSand * of('nit.area.sand')
  for (const [, { group, yieldFact, richFact }] of [...ammoniaOxidisers, ...nitriteOxidisers])
    put(`${group.id}/N`, (of('nit.areal.max_sea') * area * of(yieldFact)) / of(richFact) / 2)
}

/** What is left in rock after the days it has lain in water. */
function leaching(model: Model, parameters: Float64Array, put: Put): void {
  const of = (fact: string): number => parameter(model, parameters, fact)
  const { system } = model
  const left = (kinds: readonly KindOfRock[], held: string, release: string): number =>
    kinds.reduce(
      (sum, { kind, by }) =>
        sum +
        system.rock
          .filter((rock) => rock.kind === kind)
          .reduce(
            (part, { mass_kg, age_days, cured_days = 0 }) =>
              part + mass_kg * of(`${held}.${by}`) * exp(-of(release) * (age_days + cured_days)),
            0,
          ),
      0,
    )
  const dead = withDeadMatter(system)
  const nitrogen = left(dead, 'leach.n', 'leach.k.buried')
  put(`${rock.buried.id}/N`, nitrogen)
  put(`${rock.buried.id}/P`, left(dead, 'leach.p', 'leach.k.buried'))
  put(`${rock.buried.id}/C`, dead.length > 0 ? nitrogen * of('leach.c_per_n') : 0)
  put(
    `${rock.exchangeable.id}/P`,
    left(withExchangeable(system), 'leach.exchangeable', 'leach.k.exchangeable'),
  )
}

/** Cells of a state, µmol/L of their carbon: a system never loses its last ones, whatever a run-in says. */
const cells = (model: Model, y: Float64Array): number =>
  (y[stateIndex(model, `${water.bacteria.id}/C`)] ?? 0) / model.volume_L

function bacteria(model: Model, parameters: Float64Array, put: Put): void {
  if (!carbonDosingOf(model.system)) return
  const carbon = usual(model, 'cells') * model.volume_L
  put(`${water.bacteria.id}/C`, carbon)
  put(`${water.bacteria.id}/N`, carbon * parameter(model, parameters, 'cd.quota_N_fed'))
  put(`${water.bacteria.id}/P`, carbon * parameter(model, parameters, 'cd.quota_P_fed'))
}

/** Old rock and sand are in balance with the water of the first reading. */
function sorbed(model: Model, parameters: Float64Array, opening: Opening, put: Put): void {
  const of = (fact: string): number => parameter(model, parameters, fact)
  const { system } = model
  const aged = system.rock
    .filter(({ age_days }) => age_days >= usual(model, 'young'))
    .reduce((sum, { mass_kg }) => sum + mass_kg, 0)
  const phosphate = convert(opening.phosphate_mg_L, 'mg PO4 L⁻¹', 'µmol L⁻¹')
  const load =
    ((system.sand?.mass_kg ?? 0) + of('sorb.rock_share') * aged) *
    of('sorb.kd.sand') *
    freundlich(phosphate, 1, of('sorb.freundlich.n'))
  put(`${rock.sorbedFast.id}/P`, load * of('sorb.fast_share'))
  put(`${rock.sorbedSlow.id}/P`, load * (1 - of('sorb.fast_share')))
}

/** Stands of the cover that the description tells, with typical stores. */
function algae(model: Model, parameters: Float64Array, put: Put): void {
  const { system } = model
  const kinds = [...new Set(system.algae.map(({ kind }) => kind))]
  const stores = new Map<string, number>()
  const store = (id: string, amount: number): void => {
    stores.set(id, (stores.get(id) ?? 0) + amount)
  }
  for (const surface of system.surfaces) {
    const least = usual(model, surface.age_days < usual(model, 'young') ? 'newCover' : 'oldCover')
    const told = (kind: string): number =>
      Math.max(
        system.algae.find((one) => one.kind === kind && one.surface === surface.id)?.cover ?? least,
        least,
      )
    for (const kind of kinds) {
      const ofLayer = kinds.filter((other) => layerOf(other) === layerOf(kind))
      const together = ofLayer.reduce((sum, other) => sum + told(other), 0)
      const of = (name: string): number => parameter(model, parameters, `algae.${kind}.${name}`)
      for (const [patch, filled] of spread(together, 1 - ofLayer.length * least, (each) =>
        patchShare(surface, each, model.facts),
      )) {
        const cover = Math.max(least, (filled * told(kind)) / together)
        const full = of('full_cover_mass') * surface.area_m2 * patchShare(surface, patch, model.facts)
        const mass = full * massOfCover(kind, cover)
        const stand = { surface: surface.id, kind, patch }
        const { id } = storesAccount(surface.vessel, kind)
        put(standCover(stand).id, cover)
        put(`${standAccount(stand).id}/C`, mass * of('tissue_C'))
        store(`${id}/N`, (mass * (of('quota_N_min') + of('quota_N_max'))) / 2)
        store(`${id}/P`, (mass * (of('quota_P_min') + of('quota_P_max'))) / 2)
      }
    }
  }
  for (const [id, amount] of stores) put(id, amount)
}

/** Mass of a cover relative to that of a full stand: films by the cover they make, tufts half grown. */
function massOfCover(kind: string, cover: number): number {
  switch (growthForm(kind)) {
    case 'film':
      return -ln(1 - Math.min(cover, 0.95)) / 3
    case 'crust':
      return cover
    case 'tufted':
      return cover / 2
  }
}

/**
 * The told cover of a layer fills the hidden patches first: what mouths leave is where they do not get.
 *
 * @param most of a patch that can be filled; the rest is kept for the traces of every kind
 */
function spread(
  cover: number,
  most: number,
  shareOf: (patch: Patch) => number,
): readonly (readonly [Patch, number])[] {
  let left = cover
  const filled: (readonly [Patch, number])[] = []
  for (const patch of [...patches].reverse()) {
    const share = shareOf(patch)
    const here = share > 0 ? Math.min(most, left / share) : 0
    left -= here * share
    filled.push([patch, here])
  }
  return filled
}
