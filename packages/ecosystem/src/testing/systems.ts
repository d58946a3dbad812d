import type { Event } from '../log.ts'
import type { Surface, System } from '../system.ts'

/** An invented reef of 600 L with everything that is modelled switched on. */
export const reef: System = {
  id: 'reef',
  name: 'Reef of 600 L',
  timeZone: 'UTC',
  vessels: [
    { id: 'display', kind: 'display', volume_L: 480 },
    { id: 'sump', kind: 'sump', volume_L: 120 },
  ],
  flow: [{ a: 'display', b: 'sump', L_per_hour: 3000 }],
  surfaces: [
    {
      id: 'rock_face',
      vessel: 'display',
      kind: 'rock_face',
      area_m2: 2,
      light_umol_m2_s: 200,
      light_h_per_day: 9,
      age_days: 900,
    },
    {
      id: 'glass',
      vessel: 'display',
      kind: 'glass',
      area_m2: 1.8,
      light_umol_m2_s: 90,
      light_h_per_day: 9,
      age_days: 900,
    },
    {
      id: 'sand',
      vessel: 'display',
      kind: 'sand',
      area_m2: 0.9,
      light_umol_m2_s: 120,
      light_h_per_day: 9,
      age_days: 900,
    },
  ],
  rock: [{ kind: 'cured live', mass_kg: 45, age_days: 900 }],
  sand: { mass_kg: 35, depth_cm: 3 },
  source_water: { NO3_mg_L: 1, PO4_mg_L: 0.02 },
  salt_mix: { NO3_mg_L: 0.1, PO4_mg_L: 0.01 },
  salinity_psu: 35,
  temperature_C: 25.5,
  evaporation_L_per_day: 8,
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
    { kind: 'ferric media reactor', mass_g: 150, flow_L_per_hour: 100 },
    { kind: 'water change', volume_L: 60, every_days: 14 },
    {
      kind: 'refugium',
      algae: 'Chaetomorpha',
      wet_mass_g: 600,
      // Fresh from richer water: it leaks at first.
      N_of_dry: 0.05,
      P_of_dry: 0.003,
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
    { kind: 'mixed reef fish', count: 12, mass_g: 15, role: 'fish' },
    { kind: 'trochus snail', taxon: 'Trochus histrio', count: 25, role: 'grazer' },
  ],
  corals: { kind: 'mixed', area_m2: 1.2 },
  algae: [{ kind: 'hair_green', surface: 'rock_face', cover: 0.1 }],
}

/** An invented box of 50 L of warm sea water, with nothing in it and nothing done to it. */
export const box: System = {
  id: 'box',
  name: 'Box of 50 L',
  timeZone: 'UTC',
  vessels: [{ id: 'display', kind: 'display', volume_L: 50 }],
  flow: [],
  surfaces: [],
  rock: [],
  source_water: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salt_mix: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salinity_psu: 35,
  temperature_C: 25,
  evaporation_L_per_day: 0,
  feeds: [],
  equipment: [],
  animals: [],
  algae: [],
}

/** A square metre of lit rock face for the box. */
export const plate: Surface = {
  id: 'plate',
  vessel: 'display',
  kind: 'rock_face',
  area_m2: 1,
  light_umol_m2_s: 200,
  light_h_per_day: 10,
  age_days: 900,
}

/** A year of the reef in which everything happens that can. */
export const reefYear: readonly Event[] = [
  { day: 20.5, kind: 'dose', substance: 'sodium nitrate', mass_g: 4 },
  { day: 33.5, kind: 'dose', substance: 'monopotassium phosphate', mass_g: 0.3 },
  { day: 41.2, kind: 'dose', substance: 'ammonium chloride', mass_g: 0.2 },
  {
    day: 60,
    kind: 'hand removal',
    surface: 'rock_face',
    algae: 'hair_green',
    share: 0.9,
    leftToDrift: false,
  },
  { day: 90, kind: 'hand removal', surface: 'glass', algae: 'hair_green', share: 1, leftToDrift: true },
  { day: 120, kind: 'media placed', mass_g: 150 },
  { day: 200, kind: 'media removed' },
  { day: 210, kind: 'water change', volume_L: 300 },
  { day: 215, kind: 'harvest', from: 'refugium', wet_g: 400 },
  { day: 220, kind: 'light change', light_h_per_day: 7 },
  { day: 230, kind: 'animals added', taxon: 'Trochus histrio', count: 15, mass_g: 9 },
  { day: 260, kind: 'animals lost', taxon: 'Trochus histrio', count: 30 },
  { day: 280, kind: 'feed change', g_per_day: 0 },
  { day: 330, kind: 'feed change', g_per_day: 20 },
]
