/**
 * Which part of the project a quantity rests on that is not built. A statement that rests on one is
 * skipped under its name: neither passed nor failed.
 */
import type { CaseFile, Check } from './case-file.ts'

export const missingParts = [
  'crew',
  'ladder',
  'key',
  'commissioning',
  'mechanical_filter',
  'carbon_dosing',
  'activated_carbon',
  'denitrification',
  'leaching',
] as const

/** 'model' stands for the model itself where it cannot be asked. */
export type Part = (typeof missingParts)[number] | 'model'

/** Quantities that belong to one missing part, whatever the system. */
const wholly: Readonly<Record<string, Part>> = {
  most_exposed_surface: 'crew',
  grazing_capacity_at_surface: 'crew',
  crew_must_include_group: 'crew',
  crew_must_not_include: 'crew',
  crew_hungry: 'crew',
  crew_size_first_step: 'crew',
  crew_count_max: 'crew',
  diet_score: 'crew',
  identify_kind: 'key',
  ask_next: 'key',
  measure_first: 'ladder',
  measure_not: 'ladder',
  caution_shown: 'ladder',
  cycle_order: 'commissioning',
  nitrite_peak_mg_L: 'commissioning',
  ready_date_days: 'commissioning',
  ready_now: 'commissioning',
  ready_requires: 'commissioning',
}

/** Accounts and processes that a check can name, and the part that would move them. */
const namedParts: Readonly<Record<string, Part>> = {
  mechanical_filter: 'mechanical_filter',
  siphoned_detritus: 'mechanical_filter',
  activated_carbon: 'activated_carbon',
  organic_carbon_dosing: 'carbon_dosing',
  carbon_dose: 'carbon_dosing',
  rock_leaching: 'leaching',
  air: 'denitrification',
  crew: 'crew',
}

/** Equipment that moves so much N or P that a forecast without it would be of another system. */
const decisive: Readonly<Record<string, Part>> = {
  'organic carbon dosing': 'carbon_dosing',
}

/** What else carries matter out, and so counts where exports are compared. */
const carriesOut: Readonly<Record<string, Part>> = {
  ...decisive,
  'filter floss': 'mechanical_filter',
  'filter sock': 'mechanical_filter',
  'activated carbon': 'activated_carbon',
}

/** Rock that leaches: fresh from the sea, or dried with what lived in it. */
const leaches = ['uncured live', 'dried ex-ocean']
/** Days in which such rock cures; common practice: two to six months. */
const curingDays = 180

const forecasts = [
  'nitrate_trend_30d',
  'phosphate_trend_30d',
  'nitrate_equilibrium_before_change_mg_L',
  'nitrate_equilibrium_after_change_mg_L',
  'response',
  'response_factor',
  'storage_change_N_sign',
  'storage_change_P_sign',
  'source_sign_N',
  'source_sign_P',
  'largest_source_to_water_N',
  'largest_source_to_water_P',
  'growth_positive',
  'net_growth_sign',
  'phosphate_rebound_after_water_change',
  'phosphate_rebound_after_media',
  'media_exhausted',
  'media_exhausted_day',
  'PO4_removed_total_mg',
]

const comparesExports = [
  'largest_export_N',
  'largest_export_P',
  'export_share_N',
  'export_share_P',
  'export_ratio_N',
  'export_share_ratio_N',
  'export_N_total_below_input',
]

/** The missing part that this check of this case rests on, or undefined where all it needs is there. */
export function missingPart(check: Check, file: CaseFile): Part | undefined {
  const { quantity } = check
  if (wholly[quantity] !== undefined) return wholly[quantity]
  const asksModel = forecasts.includes(quantity) || comparesExports.includes(quantity)
  if (!asksModel) return quantity === 'limiting_nutrient' ? partNamed(check) : undefined
  return (
    partNamed(check) ??
    leachingRock(file) ??
    partOwned(file, comparesExports.includes(quantity) ? carriesOut : decisive)
  )
}

function partNamed(check: Check): Part | undefined {
  const names = [
    check.process,
    check.account,
    check.lever,
    ...listed(check.numerator),
    ...listed(check.denominator),
  ]
  return names.map((name) => namedParts[String(name)]).find((part) => part !== undefined)
}

function partOwned({ system }: CaseFile, parts: Readonly<Record<string, Part>>): Part | undefined {
  return system.equipment.map(({ kind }) => parts[kind]).find((part) => part !== undefined)
}

function leachingRock({ system, log }: CaseFile): Part | undefined {
  const inPlace = system.rock.some(({ kind, age_days }) => leaches.includes(kind) && age_days < curingDays)
  const added = log.events.some(
    ({ kind, rock_kind }) => kind === 'rock added' && leaches.includes(String(rock_kind)),
  )
  return inPlace || added ? 'leaching' : undefined
}

function listed(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : value === undefined ? [] : [value]
}
