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
    answer: (question) => ({ value: salinityAt(question.file, dateAsked(question)) }),
  },
  concentration_factor: {
    unit: '1',
    keys,
    answer: (question) => {
      const { file } = question
      const perLitre = ({ water, level_L }: Tank) => water.salt / level_L
      return { value: perLitre(tankAt(file, dateAsked(question))) / perLitre(tankAt(file, file.start)) }
    },
  },
  water_to_add_L: {
    unit: 'L',
    keys,
    answer: (question) => {
      const { file } = question
      const target = needed(numberIn(question.check, 'target_psu') ?? file.system.salinity_psu, 'target_psu')
      return { value: pureWaterToTarget(file, tankAt(file, dateAsked(question)).water, target) }
    },
  },
  input_accumulates_from_topoff: {
    unit: 'words',
    answer: ({ file }) => ({ value: carriedByTopOff(file), anyOrder: true }),
  },
}

/** Of the tank at noon of a date, practical salinity. */
export const salinityAt = (file: CaseFile, date: string): number => salinityOf(tankAt(file, date).water)

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

/** Water by mass, and its level by what was poured and what evaporated. */
interface Tank {
  readonly water: SaltyWater
  readonly level_L: number
}

/** The tank at noon of a date: what was done that day is done after. */
function tankAt(file: CaseFile, date: string): Tank {
  const { temperature_C, salinity_psu } = file.system
  const replaced = topOff(file)
  const full_L = waterVolume(file)
  let tank: Tank = { water: saltyWater(full_L, salinity_psu, temperature_C), level_L: full_L }
  const pour = (litres: number, what: Poured) => {
    const added = saltyWater(litres, what.salinity_psu, temperature_C)
    tank = { water: mixed(tank.water, added), level_L: tank.level_L + litres }
  }
  for (const today of datesBetween(file.start, date)) {
    for (const event of eventsOf(file, 'top-off').filter((one) => one.date === today))
      pour(Number(event.volume_L), poured(file, event.water ?? 'source water'))
    for (const event of eventsOf(file, 'water change').filter((one) => one.date === today)) {
      const litres = Number(event.volume_L)
      const water = afterTakingOut(tank.water, litres / tank.level_L)
      tank = { water, level_L: tank.level_L - litres }
      pour(litres, poured(file, event.water ?? 'source water + salt'))
    }
    const vapour_L = evaporation_L(file)
    tank = {
      water: afterEvaporation(tank.water, vapour_L, temperature_C),
      level_L: tank.level_L - vapour_L,
    }
    if (replaced.byLog || replaced.isEmpty(today)) continue
    // A float fills up to its mark and never takes out.
    if (tank.level_L < full_L) pour(full_L - tank.level_L, replaced.water(today))
  }
  return tank
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
