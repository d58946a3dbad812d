import { pow } from '@holdfast/elementary'
import { fact } from '@holdfast/facts'
import type { Equipment, Rock, RockKind, Surface, System } from '../system.ts'
import { chance } from './chance.ts'

/** Of the planar area of a pile of rock, what the lamp sees. */
const lit = 0.6

/**
 * An invented ordinary system of 60 to 3000 L: feed, stock, rock by the litre and equipment drawn within what
 * keepers usually have (common practice); what its rock shows to the water is the fact's area for its mass.
 * The same number gives the same system.
 */
export function ordinarySystem(number: number): System {
  const draw = chance(number * 7919 + 1)
  const between = (low: number, high: number): number => low + (high - low) * draw()
  const yes = (share: number): boolean => draw() < share
  // Evenly on a logarithmic scale: 60 x 50^u.
  const volume_L = Math.round(60 * pow(50, draw()))
  const fish = Math.max(2, Math.round(pow(volume_L / 40, 0.8) * between(0.8, 1.6)))
  const rock_kg = (volume_L / 12) * between(0.6, 1.5)
  const rock_m2 = rock_kg * fact('rock.area').typical
  // A box 2.3 times as long as it is wide and high: its floor, and its back and sides.
  const floor_m2 = 2.3 * pow(volume_L / 2300, 2 / 3)
  const walls_m2 = (4.3 / 2.3) * floor_m2
  // Corals stand on a part of the lit rock and spread to twice that; what they leave is its face.
  const corals_m2 = lit * rock_m2 * (0.2 + 0.6 * chance(number * 32452843 + 11)())
  const equipment: Equipment[] = [
    { kind: 'water change', volume_L: volume_L * between(0.06, 0.15), every_days: yes(0.5) ? 7 : 14 },
    ...(yes(0.9) ? [{ kind: 'skimmer' as const, rated_for_L: volume_L * between(0.8, 2) }] : []),
    ...(yes(0.8) ? [{ kind: 'filter sock' as const, changed_every_days: Math.round(between(3, 7)) }] : []),
    ...(yes(0.65)
      ? [
          {
            kind: 'ferric media reactor' as const,
            mass_g: volume_L * between(0.3, 0.8),
            replaced_every_days: Math.round(between(30, 60)),
          },
        ]
      : []),
    ...(yes(0.4) ? [{ kind: 'activated carbon' as const, replaced_every_days: 30 }] : []),
    ...(yes(0.35)
      ? [
          {
            kind: 'refugium' as const,
            algae: 'Chaetomorpha',
            wet_mass_g: 1.2 * volume_L,
            lit_area_m2: volume_L / 4000,
            light_umol_m2_s: between(100, 250),
            light_h_per_day: 14,
            // What grows in the meantime where the light is good.
            harvest_g_wet: 0.15 * volume_L,
            harvest_every_days: 14,
          },
        ]
      : []),
    ...(yes(0.15)
      ? [
          {
            kind: 'organic carbon dosing' as const,
            substance: 'ethanol' as const,
            mL_per_day: volume_L / 250,
          },
        ]
      : []),
  ]
  const surface = (kind: Surface['kind'], area_m2: number, light: number): Surface => ({
    id: kind,
    vessel: 'display',
    kind,
    area_m2,
    light_umol_m2_s: light,
    light_h_per_day: between(8, 11),
    age_days: 500,
  })
  const surfaces = [
    surface('rock_face', lit * rock_m2 - corals_m2 / 2, between(120, 250)),
    surface('rock_underside', (1 - lit) * rock_m2, 12),
    surface('glass', walls_m2, between(40, 110)),
    surface('sand', floor_m2, between(60, 130)),
  ]
  return {
    id: `ordinary-${number}`,
    name: `Ordinary system ${number}`,
    timeZone: 'UTC',
    vessels: [{ id: 'display', kind: 'display', volume_L }],
    flow: [],
    surfaces,
    rock: [{ kind: 'cured live', mass_kg: rock_kg, age_days: 500 }],
    sand: { mass_kg: floor_m2 * 14 * 3, depth_cm: 3 },
    source_water: { NO3_mg_L: 0.3, PO4_mg_L: 0.005 },
    salt_mix: { NO3_mg_L: 0.1, PO4_mg_L: 0.01 },
    salinity_psu: 35,
    temperature_C: between(24.5, 26.5),
    evaporation_L_per_day: 0.012 * volume_L,
    feeds: [
      {
        kind: 'dry pellet',
        g_per_day: 0.14 * fish * between(0.6, 1.4),
        N_mass_fraction: 0.072,
        P_mass_fraction: 0.012,
      },
      {
        kind: 'frozen mysids',
        g_per_day: 0.4 * fish * between(0.5, 1.5),
        N_mass_fraction: 0.009,
        P_mass_fraction: 0.001,
        dry_fraction: 0.11,
      },
    ],
    equipment,
    animals: [
      { kind: 'mixed reef fish', count: fish, mass_g: 12, role: 'fish' },
      { kind: 'trochus snail', taxon: 'Trochus histrio', count: Math.ceil(volume_L / 5), role: 'grazer' },
      ...(volume_L >= 300
        ? [
            {
              kind: 'yellow tang',
              taxon: 'Zebrasoma flavescens',
              count: Math.ceil(volume_L / 500),
              role: 'grazer' as const,
            },
          ]
        : []),
    ],
    corals: { kind: 'mixed', area_m2: corals_m2 },
    algae: [{ kind: 'hair_green', surface: 'rock_face', cover: 0.05 }],
  }
}

const kinds: readonly RockKind[] = [
  'cured live',
  'uncured live',
  'quarried dry',
  'man-made dry',
  'dried ex-ocean',
]

/** Every piece of equipment there is, once. */
const everything: readonly Equipment[] = [
  { kind: 'water change', volume_L: 20, every_days: 9 },
  { kind: 'continuous water change', L_per_day: 3 },
  { kind: 'skimmer', rated_for_L: 400, off: [[8, 12]] },
  { kind: 'filter floss', changed_every_days: 4 },
  { kind: 'filter sock', mesh_um: 10, changed_every_days: 6 },
  { kind: 'ferric media reactor', mass_g: 150, replaced_every_days: 20 },
  { kind: 'phosphate binder', La_mg_per_day: 6 },
  { kind: 'activated carbon', mass_g: 100, replaced_every_days: 15 },
  { kind: 'organic carbon dosing', substance: 'vinegar', mL_per_day: 20 },
  { kind: 'denitrifying reactor', fed: 'sulphur', media_L: 1 },
  { kind: 'denitrifying reactor', fed: 'organic', media_L: 0.5 },
  { kind: 'ultraviolet lamp' },
  {
    kind: 'refugium',
    algae: 'Chaetomorpha',
    wet_mass_g: 400,
    lit_area_m2: 0.08,
    light_umol_m2_s: 180,
    light_h_per_day: 14,
    harvest_g_wet: 100,
    harvest_every_days: 10,
  },
  {
    kind: 'turf scrubber',
    screen_m2: 0.02,
    light_umol_m2_s: 300,
    light_h_per_day: 14,
    harvest_every_days: 10,
  },
]

/** A system of 300 L with a drawn part of all equipment, one or two kinds of rock, with and without sand and corals. */
export function equippedSystem(number: number): System {
  const draw = chance(number * 104729 + 3)
  const base = ordinarySystem(number)
  const rock: readonly Rock[] = kinds.flatMap((kind) =>
    draw() < 0.4 ? [{ kind, mass_kg: 5 + 20 * draw(), age_days: draw() < 0.5 ? 0 : 500 }] : [],
  )
  const { sand, corals, ...rest } = base
  return {
    ...rest,
    id: `equipped-${number}`,
    vessels: [{ id: 'display', kind: 'display', volume_L: 300 }],
    rock,
    ...(draw() < 0.6 && sand ? { sand } : {}),
    ...(draw() < 0.6 && corals ? { corals } : {}),
    feeds: draw() < 0.85 ? base.feeds : [],
    equipment: everything.filter(() => draw() < 0.5),
  }
}
