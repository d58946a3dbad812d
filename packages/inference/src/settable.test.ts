/** Every number that anything rests on is a fact, and the keeper can put another in its place for their system. */
import {
  type AlgaePresent,
  type Animals,
  assemble,
  chanceOfLowOxygen,
  dissolvedOrganicCarbon_mg_L,
  type Equipment,
  type Event,
  hoursWithoutPumps,
  type Model,
  oxygenAtDawn_mg_L,
  oxygenWarning,
  type RockKind,
  type Surface,
  type System,
  startOf,
  timeline,
  typicalParameters,
} from '@holdfast/ecosystem'
import {
  algaeKinds,
  catalogueAlone,
  coralBands,
  type Fact,
  type FactsOfSystem,
  fact,
  facts,
  factsOfSystem,
  feedKinds,
  grazers,
  neighbours,
  type OwnFact,
  surfaceKinds,
} from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { ownFactRemarks } from './assembled-on.ts'
import { readingError, readingInterval } from './kit.ts'
import { openingOn } from './opening.ts'
import { bandsOf } from './outlook.ts'

/** Another value of a fact: shares smaller, all else larger; of what is nothing in the middle the high end. */
function other({ id, low, typical, high, unit }: Fact): OwnFact {
  const factor = unit === '1' ? 0.9 : 1.1
  const numbers =
    typical === 0
      ? { low, typical: high || 0.5, high: high === 0 ? 1 : 2 * high }
      : { low: low * factor, typical: typical * factor, high: high * factor }
  return { fact: id, ...numbers, unit, reason: 'measured' }
}

const surface = (kind: Surface['kind'], more: Partial<Surface> = {}): Surface => ({
  id: kind,
  vessel: 'display',
  kind,
  area_m2: 1,
  light_umol_m2_s: 150,
  light_h_per_day: 10,
  age_days: 900,
  ...more,
})

const rockKinds: readonly RockKind[] = [
  'cured live',
  'uncured live',
  'quarried dry',
  'man-made dry',
  'dried ex-ocean',
]

const bare: System = {
  id: 'specimen',
  name: 'Specimen',
  timeZone: 'UTC',
  vessels: [{ id: 'display', kind: 'display', volume_L: 200 }],
  flow: [],
  surfaces: [],
  rock: [],
  source_water: { kind: 'reverse osmosis' },
  salt_mix: { kind: 'synthetic salt' },
  salinity_psu: 35,
  temperature_C: 25,
  evaporation_L_per_day: 1,
  feeds: [],
  equipment: [],
  animals: [],
  algae: [],
}

const bed = (algae: string): Equipment => ({
  kind: 'refugium',
  algae,
  wet_mass_g: 200,
  lit_area_m2: 0.1,
  light_umol_m2_s: 200,
  light_h_per_day: 12,
})

/** Nothing is told of it that a fact may stand in for. */
const untold: System = {
  ...bare,
  rock: rockKinds.map((kind, place) => ({ kind, mass_kg: 2, age_days: place === 0 ? 46 : 0 })),
  sand: { mass_kg: 20, depth_cm: 3 },
  feeds: feedKinds().map(({ key }) => ({ kind: key, g_per_day: 1, untold: true })),
  animals: [{ kind: 'mixed reef fish', count: 5, mass_g: 10, adult_size_cm: 12, role: 'fish' }],
  corals: { kind: 'mixed', area_m2: 1 },
  equipment: [
    { kind: 'skimmer' },
    { kind: 'continuous water change', L_per_day: 1 },
    { kind: 'filter sock', changed_every_days: 4 },
    { kind: 'ferric media reactor', mass_g: 100 },
    { kind: 'activated carbon', replaced_every_days: 30 },
    { kind: 'organic carbon dosing', substance: 'ethanol', mL_per_day: 1 },
    { kind: 'denitrifying reactor', fed: 'organic', media_L: 1 },
    { kind: 'denitrifying reactor', fed: 'sulphur', media_L: 1 },
    { kind: 'ultraviolet lamp' },
    { kind: 'phosphate binder', La_mg_per_day: 2 },
    { kind: 'turf scrubber', screen_m2: 0.05, light_umol_m2_s: 300, light_h_per_day: 12 },
    bed('chaetomorpha'),
  ],
}

const onVinegar: System = {
  ...bare,
  source_water: { kind: 'deionised' },
  equipment: [
    { kind: 'organic carbon dosing', substance: 'vinegar', mL_per_day: 10 },
    { kind: 'ferric media reactor', medium: 'activated alumina', mass_g: 100 },
    ...['ulva', 'gracilaria', 'caulerpa'].map(bed),
  ],
}

const allAlgae = (on: string): readonly AlgaePresent[] =>
  algaeKinds().map(({ key }) => ({ kind: key, surface: on, cover: 0 }))

const grown: System = {
  ...bare,
  surfaces: [surface('rock_face')],
  corals: { kind: 'mixed', area_m2: 1 },
  algae: allAlgae('rock_face'),
}

/** One kind of alga on every kind of surface, old and new. */
const surfaced: System = {
  ...bare,
  source_water: { kind: 'tap water' },
  surfaces: surfaceKinds().flatMap(({ key }) => [
    surface(key),
    surface(key, { id: `${key}, new`, age_days: 0 }),
  ]),
  algae: [{ kind: 'hair_green', surface: 'glass', cover: 0.2 }],
}

/** All grazers at once, and all that hunts them. */
const crowded: System = {
  ...grown,
  vessels: [{ id: 'display', kind: 'display', volume_L: 40 }],
  animals: [
    ...grazers().map(({ taxon }): Animals => ({ kind: taxon, taxon, count: 1, role: 'grazer' })),
    ...neighbours().flatMap(({ names }): readonly Animals[] =>
      names.map((kind) => ({ kind, count: 1, adult_size_cm: 60, role: 'other' })),
    ),
  ],
}

const specimens = { untold, 'on vinegar': onVinegar, grown, surfaced, crowded }
const living = facts().filter(({ retired }) => retired !== true)
const allOther = factsOfSystem(living.map(other))

describe('a fact that a formula draws on', () => {
  test.each(Object.entries(specimens))(
    'is drawn from the number of the keeper where it is set: %s',
    (_, system) => {
      for (const { known, fact: id, unit, band, factor } of assemble(system, allOther).parameters) {
        if (known) continue
        const { typical } = other(fact(id))
        expect(band.typical / (typical * factor), `${id} in ${unit}`).toBeCloseTo(1, 9)
        expect(typical, id).not.toBe(fact(id).typical)
      }
    },
  )
})

const drawn = new Set(
  Object.values(specimens).flatMap((system) =>
    assemble(system).parameters.flatMap(({ known, fact: id }) => (known ? [] : [id])),
  ),
)
const others = living.filter(({ id }) => !drawn.has(id))

const changes: readonly Event[] = [
  { day: 5, kind: 'equipment change', equipment: 'skimmer', changes: { air_L_per_hour: 300 } },
  { day: 6, kind: 'equipment change', equipment: 'skimmer', changes: { cup_emptied_every_days: 20 } },
]

/** Oxygen is reckoned and judged in a tank with ever more waste. */
function breath(model: Model, start: Float64Array): readonly unknown[] {
  const parameters = typicalParameters(model)
  const settings = model.settings.values
  const waste = model.states.findIndex(
    (entry) => entry.kind === 'atoms' && entry.account.id === 'bed.fast' && entry.atom === 'C',
  )
  const ammonia = model.states.findIndex(
    (entry) => entry.kind === 'atoms' && entry.account.id === 'water.ammonia',
  )
  const members = Array.from({ length: 100 }, (_, n) => {
    const states = Float64Array.from(start)
    states[waste] = n * 4e5
    states[ammonia] = n * 100
    return { model, states, parameters, settings }
  })
  return [
    members.map((member) => [
      oxygenAtDawn_mg_L(member),
      oxygenAtDawn_mg_L(member, { pumps: false, foam: false }),
      hoursWithoutPumps(member),
    ]),
    chanceOfLowOxygen(
      members,
      members.map(() => 1),
    ),
    [0.048, 0.052].map((chance) => oxygenWarning(model, chance, 6)),
    [3.8, 4.2].map((dawn) => oxygenWarning(model, 0, dawn)),
    dissolvedOrganicCarbon_mg_L(model, start),
  ]
}

const readings = (['nitrate', 'phosphate', 'ammonia', 'nitrite', 'cover'] as const).map((quantity) => ({
  day: 0,
  quantity,
  value: 0.5,
  belowDetection: false,
}))

/** All that one can see of a system which is not drawn anew for each member. */
function seen(system: System, here: FactsOfSystem): string {
  const model = assemble(system, here)
  const parameters = typicalParameters(model)
  const question = {
    system,
    observations: [],
    events: [],
    from: 0,
    asOf: 0,
    horizonDays: 30,
    seed: 1,
    members: 1,
  }
  const opening = openingOn(question, 0, new Map(), here)
  const start = startOf(model, parameters, opening, 0)
  return JSON.stringify([
    [...model.settings.values],
    model.blocks.map(({ names }) => names.length),
    opening,
    [...start],
    timeline({ system, facts: here, events: changes, from: 0, to: 40, asOf: 0 }),
    system === untold ? breath(model, start) : [],
    readings.map((reading) => [readingInterval(reading, here), readingError(reading, here)]),
    coralBands().map(({ key }) => bandsOf(key, here).map(({ low, high }) => [low, high])),
  ])
}

const small = { untold, 'on vinegar': onVinegar, surfaced }
const usual = new Map(Object.values(small).map((system) => [system, seen(system, catalogueAlone)]))
const moves = (some: readonly Fact[]): boolean =>
  [...usual].some(([system, before]) => seen(system, factsOfSystem(some.map(other))) !== before)

/** Whether the ledger and the outlook say of each that the keeper's own value moves nothing. */
const isCalledIdle = (some: readonly Fact[]): boolean =>
  Object.values(small).every((system) => {
    const remarks = ownFactRemarks(assemble(system, factsOfSystem(some.map(other))))
    return some.every(({ id, aside }) =>
      remarks.includes(
        `Your own value of ${id} moves nothing: ${aside ?? 'nothing in this system rests on it'}.`,
      ),
    )
  })

const asides = living.filter(({ aside }) => aside !== undefined)

describe('a fact that no formula draws on', () => {
  test.each(others.filter(({ aside }) => aside === undefined).map((one) => [one.id, one] as const))(
    '%s is set and moves what rests on it',
    (_, one) => {
      expect(moves([one])).toBe(true)
      expect(isCalledIdle([one])).toBe(false)
    },
  )

  test('that says why it stands aside moves nothing, and the keeper who sets it hears why', () => {
    expect(asides.length).toBeGreaterThan(100)
    expect(moves(asides) ? asides.filter((one) => moves([one])).map(({ id }) => id) : []).toEqual([])
    expect(isCalledIdle(asides)).toBe(true)
  })

  test('says nothing of standing aside where a formula draws on it', () => {
    expect(asides.filter(({ id }) => drawn.has(id)).map(({ id }) => id)).toEqual([])
  })
})
