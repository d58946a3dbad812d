import type { Day, Event, Observation, Rock, System } from '@holdfast/ecosystem'
import type { OutlookQuestion } from '@holdfast/inference'

/** An invented dark tank of 200 L on quarried rock, filled with clean salt water. */
export const newTank = (
  rock: readonly Rock[] = [{ kind: 'quarried dry', mass_kg: 20, age_days: 0 }],
): System => ({
  id: 'new',
  name: 'New tank',
  timeZone: 'UTC',
  vessels: [{ id: 'display', kind: 'display', volume_L: 200 }],
  flow: [],
  surfaces: [
    {
      id: 'rock_face',
      vessel: 'display',
      kind: 'rock_face',
      area_m2: 1.1,
      light_umol_m2_s: 0,
      light_h_per_day: 0,
      age_days: 0,
    },
  ],
  rock,
  source_water: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salt_mix: { NO3_mg_L: 0, PO4_mg_L: 0 },
  salinity_psu: 35,
  temperature_C: 26,
  pH: 8.1,
  evaporation_L_per_day: 0,
  feeds: [],
  equipment: [],
  animals: [],
  algae: [],
})

/** A reading in its usual unit; nothing is a reading below 0.05 of it. */
export const read = (day: Day, quantity: Observation['quantity'], value: number): Observation =>
  value === 0
    ? { day, quantity, value: 0.05, belowDetection: true }
    : { day, quantity, value, belowDetection: false }

/** 1.528 g of ammonium chloride in 200 L are 2 mg/L of N: 2 x 200 x 53.49 / 14.007 mg. */
export const dose = (day: Day, mass_g = 1.528): Event => ({
  day,
  kind: 'dose',
  substance: 'ammonium chloride',
  mass_g,
})

export const asked = (
  asOf: Day,
  observations: readonly Observation[],
  events: readonly Event[],
  system: System = newTank(),
): OutlookQuestion => ({
  system,
  observations,
  events,
  from: 0,
  asOf,
  horizonDays: 1,
  members: 24,
  seed: 1,
})
