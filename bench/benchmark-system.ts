import {
  assemble,
  type Event,
  type Model,
  type Moment,
  type Surface,
  type System,
  startOf,
  timeline,
  typicalParameters,
} from '@holdfast/ecosystem'

/** Where algae stand: vessel, kind, area in m², light while the lamp is on, its hours. */
const places: readonly (readonly [
  id: string,
  vessel: string,
  kind: Surface['kind'],
  area: number,
  light: number,
  hours: number,
])[] = [
  ['rock_face', 'display', 'rock_face', 2, 200, 9],
  ['rock_underside', 'display', 'rock_underside', 1.2, 12, 9],
  ['glass', 'display', 'glass', 1.8, 90, 9],
  ['sand', 'display', 'sand', 0.9, 120, 9],
  ['frag_rack', 'display', 'frag_rack', 0.2, 180, 9],
  ['overflow', 'display', 'plumbing_overflow', 0.3, 15, 9],
  ['sump_glass', 'sump', 'glass', 0.8, 20, 14],
  ['sump_equipment', 'sump', 'equipment', 0.4, 10, 14],
  ['refugium_glass', 'refugium', 'glass', 0.5, 60, 14],
]

/** The kinds present, a film, a mat, two tufted ones and the crust; more of them for the growth of cost. */
const kinds: readonly string[] = ['hair_green', 'film_green', 'film_diatom', 'coralline', 'turf']
const moreKinds: readonly string[] = [
  'bryopsis',
  'bubble',
  'red_cotton',
  'red_turf',
  'cyano',
  'dino',
  'caulerpa',
  'macro',
  'brown_crust_lobe',
  'chrysophyte',
]

const first = 0.45

/** Surfaces beside the nine: further panes of the display. */
const furtherPane = (number: number): (typeof places)[number] => [
  `pane_${number}`,
  'display',
  'glass',
  0.5,
  70,
  9,
]

/**
 * The system on which speed is measured: an invented reef of 700 L in three vessels, nine surfaces in
 * three patches each, five kinds of algae, and every piece of equipment. It is fixed: figures of two
 * versions are comparable only while it stays.
 *
 * @param surfaceCount  other than 9 only to see how cost grows
 * @param kindCount     other than 5 only for the same
 */
export function benchmarkSystem(surfaceCount = places.length, kindCount = kinds.length): System {
  const chosenPlaces = Array.from({ length: surfaceCount }, (_, n) => places[n] ?? furtherPane(n))
  return {
    id: 'benchmark',
    name: 'Reef of 700 L in three vessels',
    timeZone: 'UTC',
    vessels: [
      { id: 'display', kind: 'display', volume_L: 500 },
      { id: 'sump', kind: 'sump', volume_L: 120 },
      { id: 'refugium', kind: 'refugium', volume_L: 80 },
    ],
    flow: [
      { a: 'display', b: 'sump', L_per_hour: 3000 },
      { a: 'sump', b: 'refugium', L_per_hour: 400 },
    ],
    surfaces: chosenPlaces.map(([id, vessel, kind, area_m2, light_umol_m2_s, light_h_per_day]) => ({
      id,
      vessel,
      kind,
      area_m2,
      light_umol_m2_s,
      light_h_per_day,
      age_days: 900,
    })),
    rock: [
      { kind: 'cured live', mass_kg: 40, age_days: 900 },
      { kind: 'uncured live', mass_kg: 2, age_days: 0 },
      { kind: 'dried ex-ocean', mass_kg: 3, age_days: 0, cured_days: 60 },
      { kind: 'quarried dry', mass_kg: 2, age_days: 0 },
      { kind: 'man-made dry', mass_kg: 2, age_days: 0 },
    ],
    sand: { mass_kg: 35, depth_cm: 3 },
    source_water: { NO3_mg_L: 1, PO4_mg_L: 0.02 },
    salt_mix: { NO3_mg_L: 0.1, PO4_mg_L: 0.01 },
    salinity_psu: 35,
    temperature_C: 24.8,
    evaporation_L_per_day: 9,
    feeds: [
      { kind: 'dry pellet', g_per_day: 3, N_mass_fraction: 0.072, P_mass_fraction: 0.012 },
      {
        kind: 'frozen mysids',
        g_per_day: 8,
        N_mass_fraction: 0.009,
        P_mass_fraction: 0.001,
        dry_fraction: 0.11,
      },
    ],
    equipment: [
      { kind: 'skimmer', rated_for_L: 800 },
      { kind: 'ferric media reactor', mass_g: 150, flow_L_per_hour: 100, replaced_every_days: 45 },
      { kind: 'water change', volume_L: 7, every_days: 1, first },
      { kind: 'continuous water change', L_per_day: 1 },
      { kind: 'filter floss', changed_every_days: 4 },
      { kind: 'filter sock', changed_every_days: 7, mesh_um: 10 },
      { kind: 'phosphate binder', La_mg_per_day: 3 },
      { kind: 'activated carbon', mass_g: 200, replaced_every_days: 30 },
      { kind: 'organic carbon dosing', substance: 'ethanol', mL_per_day: 1 },
      { kind: 'denitrifying reactor', fed: 'organic', media_L: 0.2 },
      { kind: 'denitrifying reactor', fed: 'sulphur', media_L: 0.3, flow_L_per_hour: 1 },
      { kind: 'ultraviolet lamp', flow_L_per_hour: 300 },
      {
        kind: 'refugium',
        vessel: 'refugium',
        algae: 'Chaetomorpha',
        wet_mass_g: 600,
        lit_area_m2: 0.1,
        light_umol_m2_s: 200,
        light_h_per_day: 12,
        harvest_g_wet: 150,
        harvest_every_days: 14,
      },
      {
        kind: 'turf scrubber',
        screen_m2: 0.02,
        light_umol_m2_s: 300,
        light_h_per_day: 14,
        harvest_every_days: 10,
      },
    ],
    animals: [
      { kind: 'mixed reef fish', count: 12, mass_g: 15, adult_size_cm: 10, role: 'fish' },
      { kind: 'trochus snail', taxon: 'Trochus histrio', count: 25, role: 'grazer' },
      { kind: 'yellow tang', taxon: 'Zebrasoma flavescens', count: 1, role: 'grazer' },
      { kind: 'Calcinus laevimanus', count: 10, role: 'grazer', taxon: 'Calcinus laevimanus' },
    ],
    corals: { kind: 'mixed', area_m2: 1.2 },
    algae: [...kinds, ...moreKinds].slice(0, kindCount).map((kind, n) => ({
      kind,
      surface: chosenPlaces[n % chosenPlaces.length][0],
      cover: 0.1,
    })),
  }
}

/** Something is logged every day: a dose of nitrate and phosphate, and now and then a hand in the tank. */
export function dailyEvents(days: number): readonly Event[] {
  return Array.from({ length: days }, (_, day): readonly Event[] => {
    const at = day + first
    return [
      { day: at, kind: 'dose', substance: 'sodium nitrate', mass_g: 0.1 },
      { day: at, kind: 'dose', substance: 'monopotassium phosphate', mass_g: 0.01 },
      ...(day % 28 === 20
        ? [
            {
              day: at,
              kind: 'hand removal',
              surface: 'rock_face',
              algae: 'hair_green',
              share: 0.7,
              leftToDrift: false,
            } as const,
          ]
        : []),
      ...(day % 60 === 30 ? [{ day: at, kind: 'siphoning', part: 0.5 } as const] : []),
    ]
  }).flat()
}

export interface BenchmarkRun {
  readonly model: Model
  readonly parameters: Float64Array
  readonly start: Float64Array
  readonly from: number
  readonly to: number
  readonly timeline: readonly Moment[]
  readonly samples: readonly number[]
}

/** The benchmark system with its daily events, ready to be run: typical parameters, samples every five days. */
export function benchmarkRun(days = 365, system = benchmarkSystem()): BenchmarkRun {
  const model = assemble(system)
  const parameters = typicalParameters(model)
  const start = startOf(model, parameters, { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }, 0)
  const moments = timeline({ system, events: dailyEvents(days), from: 0, to: days, asOf: 0 })
  // Before the events of their day, and at no end of a step.
  const samples = Array.from({ length: Math.floor(days / 5) }, (_, n) => 5 * (n + 1) - 0.2)
  return { model, parameters, start, from: 0, to: days, timeline: moments, samples }
}
