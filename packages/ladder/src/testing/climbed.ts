import { presentOfPast } from '@holdfast/crew-plan'
import type { Event, Observation, System } from '@holdfast/ecosystem'
import { past } from '@holdfast/inference'
import { type LadderAnswer, type LadderQuestion, ladder } from '../index.ts'

/** The day on which the tests look; the log begins sixty days before. */
export const today = 20_000.5

/** An invented reef of 300 L with corals, fish and a medium, where nothing is wrong. */
export const soundReef: System = {
  id: 'sound',
  name: 'Reef of 300 L',
  timeZone: 'UTC',
  vessels: [{ id: 'display', kind: 'display', volume_L: 300, length_cm: 110 }],
  flow: [],
  surfaces: [
    {
      id: 'rock_face',
      vessel: 'display',
      kind: 'rock_face',
      area_m2: 1.2,
      light_umol_m2_s: 180,
      light_h_per_day: 9,
      age_days: 700,
    },
    {
      id: 'overflow',
      vessel: 'display',
      kind: 'plumbing_overflow',
      area_m2: 0.1,
      light_umol_m2_s: 80,
      light_h_per_day: 9,
      age_days: 700,
      enclosed: true,
      opening_mm: 4,
    },
  ],
  rock: [{ kind: 'cured live', mass_kg: 25, age_days: 700 }],
  sand: { mass_kg: 20, depth_cm: 2 },
  source_water: {},
  salt_mix: {},
  salinity_psu: 35,
  temperature_C: 25,
  evaporation_L_per_day: 4,
  feeds: [
    { kind: 'dry pellet', g_per_day: 2, N_mass_fraction: 0.07, P_mass_fraction: 0.012, dry_fraction: 0.92 },
  ],
  equipment: [
    { kind: 'skimmer', rated_for_L: 400 },
    { kind: 'ferric media reactor', mass_g: 150, flow_L_per_hour: 100, placed: today - 60 },
    { kind: 'water change', volume_L: 30, every_days: 14 },
  ],
  animals: [
    { kind: 'mixed reef fish', count: 8, mass_g: 12, role: 'fish' },
    { kind: 'top snail', taxon: 'Trochus histrio', count: 10, adult_size_cm: 3, role: 'grazer' },
  ],
  corals: { kind: 'mixed', area_m2: 0.4 },
  algae: [],
}

/** Nitrate and phosphate, mg/L, on five days up to today; under what a kit reads where `below`. */
export const read = (nitrate: number, phosphate: number, below = false): readonly Observation[] =>
  [60, 45, 30, 15, 0].flatMap((ago) => [
    { day: today - ago, quantity: 'nitrate', value: nitrate, belowDetection: below },
    { day: today - ago, quantity: 'phosphate', value: phosphate, belowDetection: below },
  ])

export const seen = (algae: string, surface: string, cover: number): Observation => ({
  day: today - 3,
  quantity: 'cover',
  value: cover,
  belowDetection: false,
  surface,
  algae,
})

interface Log {
  readonly system?: Partial<System>
  readonly observations: readonly Observation[]
  readonly events?: readonly Event[]
  readonly asked?: Partial<LadderQuestion>
}

/** The ladder of the sound reef with what is changed of it. */
export function climbed({ system: changed, observations, events = [], asked }: Log): LadderAnswer {
  const system = { ...soundReef, ...changed }
  const from = today - 60
  const question = { system, observations, events, from, asOf: today, horizonDays: 1, members: 6, seed: 1 }
  const present = presentOfPast(past(question), question)
  return ladder({ present, system, observations, events, from, ...asked })
}

/** Keys of the measures offered, in order. */
export const offered = ({ rungs }: LadderAnswer): readonly string[] => rungs.map(({ measure }) => measure)

/** Why a measure is not offered. */
export const reasonAgainst = ({ leftOut }: LadderAnswer, key: string): string | undefined =>
  leftOut.find(({ measure }) => measure === key)?.because
