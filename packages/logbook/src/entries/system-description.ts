import type { Equipment, NewWaterKind, System } from '@holdfast/ecosystem'

import { isTimeZone } from '../model-day.ts'
import { count, name, notNegative, positive, share } from './kind.ts'
import { z } from './schema.ts'

/** Days of 86,400 s from 1970-01-01T00:00Z, as the model's clock has them. */
const day = z.number()

const celsius = z.number().check(z.minimum(0), z.maximum(45))

const hours = z.number().check(z.minimum(0), z.maximum(24))

export const vesselKinds = ['display', 'sump', 'refugium', 'grow-out', 'curing bin'] as const

export const surfaceKinds = [
  'rock_face',
  'rock_underside',
  'glass',
  'sand',
  'plumbing_overflow',
  'equipment',
  'frag_rack',
] as const

export const rockKinds = [
  'cured live',
  'uncured live',
  'quarried dry',
  'man-made dry',
  'dried ex-ocean',
] as const

export const filterKinds = ['filter floss', 'filter sock'] as const

export const otherEquipmentKinds = ['automatic top-off', 'circulation pump', 'heater'] as const

export const newWaterKinds: readonly NewWaterKind[] = [
  'tap water',
  'reverse osmosis',
  'deionised',
  'synthetic salt',
]

export const carbonSubstances = ['ethanol', 'vinegar', 'acetate'] as const

export const phosphateMedia = ['iron hydroxide', 'activated alumina'] as const

export const reactorFoods = ['organic', 'sulphur'] as const

export const animalRoles = ['fish', 'grazer', 'other'] as const

export const rock = z.object({
  kind: z.enum(rockKinds),
  mass_kg: positive,
  age_days: notNegative,
  cured_days: z.exactOptional(notNegative),
})

const newWater = z.object({
  kind: z.exactOptional(name),
  NO3_mg_L: z.exactOptional(notNegative),
  PO4_mg_L: z.exactOptional(notNegative),
  SiO2_mg_L: z.exactOptional(notNegative),
})

const equipment: z.ZodMiniType<Equipment> = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('water change'),
    volume_L: positive,
    every_days: positive,
    first: z.exactOptional(day),
  }),
  z.object({
    kind: z.literal('skimmer'),
    rated_for_L: z.exactOptional(positive),
    cup_emptied_every_days: z.exactOptional(positive),
    air_L_per_hour: z.exactOptional(positive),
    off: z.exactOptional(z.array(z.tuple([day, day]))),
  }),
  z.object({
    kind: z.literal('ferric media reactor'),
    medium: z.exactOptional(z.enum(phosphateMedia)),
    mass_g: positive,
    flow_L_per_hour: z.exactOptional(positive),
    placed: z.exactOptional(day),
    removed: z.exactOptional(day),
    replaced_every_days: z.exactOptional(positive),
    capacity_mg_P_per_g: z.exactOptional(z.tuple([positive, positive, positive])),
  }),
  z.object({ kind: z.literal('continuous water change'), L_per_day: positive }),
  // Loose: entries of a time without processes for these keep what they said.
  z.looseObject({
    kind: z.enum(filterKinds),
    changed_every_days: z.exactOptional(positive),
    mesh_um: z.exactOptional(positive),
  }),
  z.object({ kind: z.literal('phosphate binder'), La_mg_per_day: notNegative }),
  z.looseObject({
    kind: z.literal('activated carbon'),
    mass_g: z.exactOptional(positive),
    placed: z.exactOptional(day),
    replaced_every_days: z.exactOptional(positive),
  }),
  z.looseObject({
    kind: z.literal('organic carbon dosing'),
    substance: z.exactOptional(z.enum(carbonSubstances)),
    mL_per_day: z.exactOptional(notNegative),
    since: z.exactOptional(day),
    schedule: z.exactOptional(z.array(z.object({ from_: day, mL_ethanol_per_day: notNegative }))),
  }),
  z.object({
    kind: z.literal('denitrifying reactor'),
    fed: z.enum(reactorFoods),
    media_L: positive,
    flow_L_per_hour: z.exactOptional(positive),
  }),
  z.looseObject({ kind: z.literal('ultraviolet lamp'), flow_L_per_hour: z.exactOptional(positive) }),
  z.looseObject({
    kind: z.literal('refugium'),
    vessel: z.exactOptional(name),
    algae: z.exactOptional(name),
    wet_mass_g: z.exactOptional(notNegative),
    dry_fraction: z.exactOptional(share),
    N_of_dry: z.exactOptional(share),
    P_of_dry: z.exactOptional(share),
    lit_area_m2: z.exactOptional(positive),
    light_umol_m2_s: z.exactOptional(notNegative),
    light_h_per_day: z.exactOptional(hours),
    light_off_since: z.exactOptional(day),
    harvest_g_wet: z.exactOptional(notNegative),
    harvest_every_days: z.exactOptional(positive),
    last_harvest: z.exactOptional(day),
  }),
  z.looseObject({
    kind: z.literal('turf scrubber'),
    screen_m2: z.exactOptional(positive),
    light_umol_m2_s: z.exactOptional(notNegative),
    light_h_per_day: z.exactOptional(hours),
    harvest_every_days: z.exactOptional(positive),
  }),
  z.looseObject({ kind: z.enum(otherEquipmentKinds) }),
])

/** The ecosystem's `System` as stored in an entry; the compiler holds the two equal. */
export const systemDescription: z.ZodMiniType<System> = z.object({
  id: name,
  name,
  timeZone: name.check(z.refine(isTimeZone)),
  vessels: z
    .array(
      z.object({
        id: name,
        kind: z.enum(vesselKinds),
        volume_L: positive,
        glass_volume_L: z.exactOptional(positive),
        length_cm: z.exactOptional(positive),
      }),
    )
    .check(z.minLength(1)),
  flow: z.array(z.object({ a: name, b: name, L_per_hour: positive })),
  surfaces: z
    .array(
      z.object({
        id: name,
        vessel: name,
        kind: z.enum(surfaceKinds),
        area_m2: positive,
        light_umol_m2_s: notNegative,
        light_h_per_day: hours,
        age_days: notNegative,
        enclosed: z.exactOptional(z.boolean()),
        opening_mm: z.exactOptional(positive),
        hand_cleaned_every_days: z.exactOptional(positive),
      }),
    )
    .check(z.minLength(1)),
  rock: z.array(rock),
  sand: z.exactOptional(z.object({ mass_kg: positive, depth_cm: positive })),
  source_water: newWater,
  salt_mix: newWater,
  salinity_psu: positive,
  temperature_C: celsius,
  pH: z.exactOptional(z.number().check(z.minimum(0), z.maximum(14))),
  evaporation_L_per_day: notNegative,
  feeds: z.array(
    z.object({
      kind: name,
      g_per_day: notNegative,
      N_mass_fraction: z.exactOptional(share),
      P_mass_fraction: z.exactOptional(share),
      C_mass_fraction: z.exactOptional(share),
      dry_fraction: z.exactOptional(share),
      untold: z.exactOptional(z.boolean()),
    }),
  ),
  equipment: z.array(equipment),
  animals: z.array(
    z.object({
      kind: name,
      taxon: z.exactOptional(name),
      count: count,
      mass_g: z.exactOptional(positive),
      adult_size_cm: z.exactOptional(positive),
      role: z.enum(animalRoles),
      vessel: z.exactOptional(name),
    }),
  ),
  own_animals: z.exactOptional(
    z.array(
      z.object({
        taxon: name,
        like: name,
        adult_size_cm: z.exactOptional(positive),
        wet_mass_g: z.exactOptional(positive),
        eats_g_per_day: z.exactOptional(notNegative),
        needs_g_per_day: z.exactOptional(notNegative),
        least_volume_L: z.exactOptional(positive),
        least_length_cm: z.exactOptional(positive),
        coldest_C: z.exactOptional(celsius),
        warmest_C: z.exactOptional(celsius),
        reef_safe: z.exactOptional(z.enum(['yes', 'with caution', 'no'])),
        caution: z.exactOptional(name),
        lost_in_a_year: z.exactOptional(share),
        price_usd: z.exactOptional(notNegative),
        tastes: z.exactOptional(z.record(name, share)),
      }),
    ),
  ),
  corals: z.exactOptional(z.object({ kind: name, area_m2: notNegative })),
  algae: z.array(z.object({ kind: name, surface: name, cover: share })),
})
