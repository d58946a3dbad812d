/** Salinity and level from evaporation and top-off as the log has them. */
import {
  afterEvaporation,
  afterTakingOut,
  mixed,
  type SaltyWater,
  salinityOf,
  saltyWater,
  volumeOf,
} from '@holdfast/seawater'
import { dayNumber, isoDate } from '../calendar.ts'
import type { CaseFile } from '../case-file.ts'
import { datesBetween, evaporation_L, eventsOf, type Poured, poured, topOff } from '../husbandry.ts'
import { type Family, needed, numberIn, type Question, textIn, waterVolume } from './answer.ts'

const keys = ['day', 'date', 'target_psu']

export const evaporationAnswers: Family = {
  salinity_at_day_psu: {
    unit: 'psu',
    keys,
    answer: (question) => ({ value: salinityOf(waterAt(question.file, dateAsked(question))) }),
  },
  concentration_factor: {
    unit: '1',
    keys,
    answer: (question) => {
      const { file } = question
      const now = waterAt(file, dateAsked(question))
      const before = waterAt(file, file.start)
      const perLitre = (water: SaltyWater) => water.salt / volumeOf(water, file.system.temperature_C)
      return { value: perLitre(now) / perLitre(before) }
    },
  },
  water_to_add_L: {
    unit: 'L',
    keys,
    answer: (question) => {
      const { file } = question
      const target = needed(numberIn(question.check, 'target_psu') ?? file.system.salinity_psu, 'target_psu')
      return { value: pureWaterToTarget(file, waterAt(file, dateAsked(question)), target) }
    },
  },
  input_accumulates_from_topoff: {
    unit: 'words',
    answer: ({ file }) => ({ value: carriedByTopOff(file), anyOrder: true }),
  },
}

/**
 * Pure water that, with as much salt water let out as the level demands, leaves the first volume at the
 * target. Where only vapour left this is the vapour.
 */
function pureWaterToTarget(file: CaseFile, water: SaltyWater, target: number): number {
  const { temperature_C } = file.system
  const wanted = saltyWater(waterVolume(file), target, temperature_C)
  const kept_kg = wanted.salt / salinityOf(water)
  return volumeOf({ mass_kg: wanted.mass_kg - kept_kg, salt: 0 }, temperature_C)
}

function dateAsked({ check, file }: Question): string {
  const day = numberIn(check, 'day')
  if (day !== undefined) return isoDate(dayNumber(file.start) + day)
  return textIn(check, 'date') ?? file.asof
}

/** The water at noon of a date: what was done that day is done after. */
function waterAt(file: CaseFile, date: string): SaltyWater {
  const { temperature_C, salinity_psu } = file.system
  const replaced = topOff(file)
  const pour = (water: SaltyWater, litres: number, what: Poured) =>
    mixed(water, saltyWater(litres, what.salinity_psu, temperature_C))
  let water = saltyWater(waterVolume(file), salinity_psu, temperature_C)
  for (const today of datesBetween(file.start, date)) {
    for (const event of eventsOf(file, 'top-off').filter((one) => one.date === today))
      water = pour(water, Number(event.volume_L), poured(file, event.water ?? 'source water'))
    for (const event of eventsOf(file, 'water change').filter((one) => one.date === today)) {
      const litres = Number(event.volume_L)
      water = afterTakingOut(water, litres, temperature_C)
      water = pour(water, litres, poured(file, event.water ?? 'source water + salt'))
    }
    water = afterEvaporation(water, evaporation_L(file), temperature_C)
    if (replaced.byLog || replaced.isEmpty(today)) continue
    // A float fills up to its mark and never takes out.
    const lacking_L = waterVolume(file) - volumeOf(water, temperature_C)
    if (lacking_L > 0) water = pour(water, lacking_L, replaced.water(today))
  }
  return water
}

/** Names for what a source water carries, by the key without its unit. */
const carriedNames: Readonly<Record<string, string>> = {
  NO3: 'nitrate',
  PO4: 'phosphate',
  NH4: 'ammonia',
  Ca: 'calcium',
  Mg: 'magnesium',
  Cu: 'copper',
  silicate_SiO2: 'silicate',
  SiO2: 'silicate',
}

/** Water leaves as vapour; everything else that it brought stays. */
function carriedByTopOff({ system }: CaseFile): readonly string[] {
  if (system.evaporation_L_per_day === 0) return []
  return Object.entries(system.source_water)
    .filter(([, value]) => typeof value === 'number' && value > 0)
    .map(([key]) => key.replace(/_(mg|ug|umol|mmol|meq)_L$|_dKH$|_psu$|_ppm$|_ppb$/, ''))
    .map((name) => carriedNames[name] ?? name)
}
