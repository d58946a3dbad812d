/** How much of one thing an amount of another allows, and what a dose weighs. */
import { molarMass } from '@holdfast/quantities'
import { compoundNamed, doseMass, massFraction, pH, unIonisedAmmoniaFraction } from '@holdfast/seawater'
import { atomInRation, eventsOf, poured, usualRation, waterChanges } from '../husbandry.ts'
import { isNoModel } from '../model-answers.ts'
import { CannotAnswer, type Family, needed, numberIn, type Question, textIn, waterVolume } from './answer.ts'
import { readingAt, substanceOf, usualValue } from './readings.ts'

/** N to P by mol in growing marine bacteria. Goldman et al. 1987, Limnol. Oceanogr. 32:1239 (45:9:1, abstract read). */
const bacterialNToP = 9

const perN = molarMass('NO3') / molarMass('N')

export const stoichiometryAnswers: Family = {
  dose_mass_g: {
    unit: 'g',
    keys: ['substance', 'from_mg_L', ...targets().map(({ key }) => key)],
    answer: (question) => ({ value: doseAsked(question) }),
  },
  nitrate_uptake_allowed_by_P_mg_L: {
    unit: 'mg/L NO3',
    keys: ['N_to_P', 'PO4_mg_L'],
    answer: (question) => {
      const phosphate =
        numberIn(question.check, 'PO4_mg_L') ?? usualValue(readingAt(question.file, 'phosphate'))
      return { value: (phosphate / molarMass('PO4')) * nToP(question) * molarMass('NO3') }
    },
  },
  PO4_needed_mg_L_for_NO3_drop: {
    unit: 'mg/L PO4',
    keys: ['nitrate_drop_mg_L', 'N_to_P'],
    answer: (question) => {
      const drop = needed(numberIn(question.check, 'nitrate_drop_mg_L'), 'nitrate_drop_mg_L')
      return { value: (drop / molarMass('NO3') / nToP(question)) * molarMass('PO4') }
    },
  },
  nitrate_uptake_ceiling_mg_L_per_day: {
    unit: 'mg/L NO3 per day',
    keys: ['N_to_P'],
    answer: (question) => {
      const { file } = question
      const phosphorus_mg = 1000 * usualRation(file) * atomInRation(file, 'P')
      const nitrate_mg = (phosphorus_mg / molarMass('P')) * nToP(question) * molarMass('NO3')
      return { value: nitrate_mg / waterVolume(file) }
    },
  },
  nitrate_rise_if_bed_decays_mg_L: {
    unit: 'mg/L NO3',
    answer: ({ file }) => {
      const beds = file.system.equipment.filter(({ kind }) => kind === 'refugium')
      if (beds.length === 0) throw new CannotAnswer('needs a refugium in the equipment')
      const nitrogen_mg = beds.reduce((sum, bed) => sum + 1000 * nitrogenOf(bed), 0)
      return { value: (nitrogen_mg * perN) / waterVolume(file) }
    },
  },
  nitrate_end_of_cycle_mg_L: {
    unit: 'mg/L NO3',
    answer: ({ file, model }) => {
      // All that was dosed, at the end as nitrate: a ceiling. It is the answer only where nothing else moves N.
      const fed = file.system.feeds.length > 0 || waterChanges(file, file.start, file.asof).length > 0
      if (fed || file.system.rock.some(({ kind }) => kind === 'dried ex-ocean' || kind === 'uncured live')) {
        const course = model.commissioning(file)
        if (isNoModel(course)) return course
        return {
          value: course.peaks.find(({ quantity }) => quantity === 'nitrate')?.height.middle ?? Number.NaN,
        }
      }
      const nitrogen_mg = eventsOf(file, 'dose').reduce(
        (sum, event) => sum + 1000 * Number(event.mass_g) * nitrogenShare(String(event.substance)),
        0,
      )
      return {
        value: (nitrogen_mg * perN) / waterVolume(file) + poured(file, 'source water + salt').NO3_mg_L,
      }
    },
  },
  un_ionised_ammonia_fraction: {
    unit: '1',
    keys: ['pH', 'temperature_C', 'salinity_psu'],
    answer: (question) => ({ value: unIonisedFraction(question) }),
  },
  un_ionised_ammonia_mg_N_L: {
    unit: 'mg/L N',
    keys: ['date', 'pH', 'temperature_C', 'salinity_psu', 'TAN_N_mg_L'],
    answer: (question) => {
      const { check, file } = question
      const total =
        numberIn(check, 'TAN_N_mg_L') ?? usualValue(readingAt(file, 'ammonia', textIn(check, 'date')))
      return { value: total * unIonisedFraction(question) }
    },
  },
  N_to_P_molar_upper_bound: {
    unit: 'mol/mol',
    keys: ['date'],
    answer: ({ file, check }) => ({ value: nitrogenToPhosphorus(file, textIn(check, 'date')) }),
  },
}

/** The pH of a system is taken on the total scale. */
function unIonisedFraction({ file, check }: Question): number {
  const { system } = file
  const reading = pH('total', needed(numberIn(check, 'pH') ?? system.pH, 'pH'))
  const salinity = numberIn(check, 'salinity_psu') ?? system.salinity_psu
  const temperature = numberIn(check, 'temperature_C') ?? system.temperature_C
  return unIonisedAmmoniaFraction(reading, salinity, temperature)
}

/** What a dose can aim at: the key of the check, the atom it is about, mg of that atom in a mg. */
function targets() {
  return [
    { key: 'target_TAN_N_mg_L', atom: 'N', share: 1 },
    { key: 'target_NO3_mg_L', atom: 'N', share: molarMass('N') / molarMass('NO3') },
    { key: 'target_NO3_N_mg_L', atom: 'N', share: 1 },
    { key: 'target_PO4_mg_L', atom: 'P', share: molarMass('P') / molarMass('PO4') },
    { key: 'target_PO4_P_mg_L', atom: 'P', share: 1 },
  ] as const
}

function doseAsked({ file, check }: Question): number {
  const name = needed(textIn(check, 'substance'), 'substance')
  const compound = compoundNamed(name)
  if (compound === undefined) throw new CannotAnswer(`substance: no formula of "${name}" is known`)
  const target = needed(
    targets().find(({ key }) => check[key] !== undefined),
    'a target such as target_TAN_N_mg_L',
  )
  const rise_mg_L = needed(numberIn(check, target.key), target.key) - (numberIn(check, 'from_mg_L') ?? 0)
  return doseMass(compound, target.atom, rise_mg_L * target.share, waterVolume(file))
}

function nitrogenShare(substance: string): number {
  const compound = compoundNamed(substance)
  if (compound === undefined) throw new CannotAnswer(`dose: no formula of "${substance}" is known`)
  return massFraction(compound, 'N')
}

/** g of N in a bed of algae. */
function nitrogenOf(bed: Readonly<Record<string, unknown>>): number {
  return ['wet_mass_g', 'dry_fraction', 'N_of_dry'].reduce((product, key) => {
    const value = bed[key]
    if (typeof value !== 'number') throw new CannotAnswer(`needs ${key} of the refugium`)
    return product * value
  }, 1)
}

function nToP({ file, check }: Question): number {
  const given = file.given?.bacterial_N_to_P_molar
  return numberIn(check, 'N_to_P') ?? (typeof given === 'number' ? given : bacterialNToP)
}

/**
 * Dissolved inorganic N over P by mol with every reading of N at its value or its limit. Phosphate below
 * detection gives no bound: the true value may be anything down to nothing.
 */
function nitrogenToPhosphorus(file: Question['file'], date: string | undefined): number {
  const phosphate = readingAt(file, 'phosphate', date)
  if (phosphate.below_detection) throw new CannotAnswer('needs phosphate that could be read')
  const nitrogen = (['nitrate', 'nitrite', 'ammonia'] as const).map((quantity) => {
    const has = file.log.readings.some(
      (reading) => reading.quantity === quantity && reading.date <= (date ?? file.asof),
    )
    if (!has && quantity !== 'nitrate') return 0
    const form = needed(
      substanceOf(quantity, { nitrate: 'NO3', nitrite: 'NO2', ammonia: 'TAN-N' }[quantity]),
      'a form',
    )
    return usualValue(readingAt(file, quantity, quantity === 'nitrate' ? date : undefined)) / molarMass(form)
  })
  const moles = nitrogen.reduce((sum, each) => sum + each, 0)
  return moles / (usualValue(phosphate) / molarMass('PO4'))
}
