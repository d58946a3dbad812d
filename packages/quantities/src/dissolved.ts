import {
  type Answer,
  type Asked,
  type Issue,
  type IssueCode,
  type NextStep,
  refused,
  understood,
} from './issue.ts'
import type { MilligramsPerLitre } from './measured.ts'
import { molarMass, type Substance } from './molar-masses.ts'
import { type NumberStyle, readFigure } from './number-text.ts'
import { lowest, mapStated, type Stated } from './stated.ts'
import { question } from './words.ts'

/** What a mass concentration is of: the ion, or the atom in it. */
export type Form = 'NO3' | 'NO2' | 'NH3' | 'NH4' | 'PO4' | 'N' | 'P'

export type Nutrient = 'nitrate' | 'nitrite' | 'ammonia' | 'phosphate'

interface Dissolved {
  readonly where: string
  readonly next: NextStep
  /** The form in which the project keeps it. */
  readonly canonical: Form
  /** Each form with the names people give it; the first is the one shown. */
  readonly forms: Readonly<Partial<Record<Form, readonly string[]>>>
}

const nutrients: Readonly<Record<Nutrient, Dissolved>> = {
  nitrate: {
    where: 'Nitrate',
    next: 'give-nitrate',
    canonical: 'NO3',
    forms: { NO3: ['NO3', 'NO3-', 'NO₃', 'NO₃⁻'], N: ['NO3-N', 'NO3N', 'NO₃-N', 'N', 'N-NO3', 'nitrate-N'] },
  },
  nitrite: {
    where: 'Nitrite',
    next: 'give-nitrite',
    canonical: 'NO2',
    forms: { NO2: ['NO2', 'NO2-', 'NO₂', 'NO₂⁻'], N: ['NO2-N', 'NO2N', 'NO₂-N', 'N', 'N-NO2', 'nitrite-N'] },
  },
  ammonia: {
    where: 'Ammonia',
    next: 'give-ammonia',
    canonical: 'N',
    forms: {
      N: ['N', 'NH3-N', 'NH4-N', 'TAN', 'TAN-N', 'NH₃-N', 'NH₄-N', 'ammonia-N'],
      NH3: ['NH3', 'NH₃'],
      NH4: ['NH4', 'NH4+', 'NH₄', 'NH₄⁺'],
    },
  },
  phosphate: {
    where: 'Phosphate',
    next: 'give-phosphate',
    canonical: 'PO4',
    forms: {
      PO4: ['PO4', 'PO4---', 'PO₄', 'PO₄³⁻'],
      P: ['PO4-P', 'PO4P', 'PO₄-P', 'P', 'P-PO4', 'phosphate-P', 'phosphorus'],
    },
  },
}

/** As kits print them: ppm stands for mg/L and ppb for µg/L, though sea water is 2 to 3 % heavier. */
const massUnits = { 'mg/L': 1, ppm: 1, 'µg/L': 1e-3, ppb: 1e-3 } as const
const molarUnits = { 'µmol/L': 1e-3, 'mmol/L': 1 } as const
export type ConcentrationUnit = keyof typeof massUnits | keyof typeof molarUnits
const accepted = [...Object.keys(massUnits), ...Object.keys(molarUnits)] as readonly ConcentrationUnit[]

export interface ConcentrationOptions extends NumberStyle {
  readonly where?: string
  /** Unit and form where the text has none, such as those of the column; the text comes first. */
  readonly unit?: ConcentrationUnit
  readonly form?: Form
}

/** A reading, with unit and form as typed beside the canonical value. */
export interface Concentration {
  /** mg/L as the canonical form: NO3, NO2, PO4, and N for total ammonia. */
  readonly stated: Stated<MilligramsPerLitre>
  readonly unit: ConcentrationUnit
  /** Absent where the unit counts moles. */
  readonly form?: Form
}

/** '5 mg/L NO3', '22 ppb P', '<0.03 ppm PO4', '80 µmol/L'; a mass without its form is asked about. */
export function parseConcentration(
  nutrient: Nutrient,
  text: string,
  options: ConcentrationOptions = {},
): Answer<Concentration> {
  const dissolved = nutrients[nutrient]
  const where = options.where ?? dissolved.where
  const got = text.trim()
  const issue = (code: IssueCode): Issue => ({ code, where, got, accepted, next: dissolved.next })
  const { stated, wrong, rest } = readFigure(text, options)
  if (wrong === 'empty') return refused(issue('empty'))

  const written = splitForm(dissolved, rest)
  const unit = written.unit === '' ? options.unit : concentrationUnit(written.unit)
  const issues: Issue[] = []
  if (wrong !== undefined) issues.push(issue(wrong))
  if (unit === undefined) issues.push(issue(written.unit === '' ? 'no-unit' : 'unknown-unit'))
  if (stated !== undefined && (lowest(stated) ?? 0) < 0) issues.push(issue('negative'))
  if (stated === undefined || unit === undefined || issues.length > 0) return refused(...issues)

  if (isMolar(unit)) return understood({ stated: canonically(nutrient, stated, unit), unit })
  const form = written.form ?? options.form
  if (form !== undefined && dissolved.forms[form] === undefined) return refused(issue('unknown-unit'))
  if (form !== undefined) return understood({ stated: canonically(nutrient, stated, unit, form), unit, form })
  const figure = rest === '' ? got : got.slice(0, got.length - rest.length).trim()
  return whichForm(nutrient, where, got, `${figure} ${unit}`)
}

/** A canonical value (mg/L) as it reads in a unit and form. */
export function concentrationIn(
  nutrient: Nutrient,
  value: MilligramsPerLitre,
  unit: ConcentrationUnit,
  form: Form,
): number {
  return value / toCanonical(nutrient, unit, form)
}

/** mg/L in the canonical form for 1 of the unit; molar units take no notice of the form. */
function toCanonical(nutrient: Nutrient, unit: ConcentrationUnit, form: Form | undefined): number {
  const { canonical } = nutrients[nutrient]
  if (isMolar(unit)) return molarUnits[unit] * molarMass(canonical)
  return (massUnits[unit] * molarMass(canonical)) / molarMass(form ?? canonical)
}

function canonically(nutrient: Nutrient, stated: Stated, unit: ConcentrationUnit, form?: Form): Stated {
  const factor = toCanonical(nutrient, unit, form)
  return mapStated(stated, (value) => value * factor)
}

function whichForm(nutrient: Nutrient, where: string, got: string, clear: string): Asked {
  const { forms, canonical } = nutrients[nutrient]
  const code = 'which-form'
  const options = Object.entries(forms).map(([form, names]) => {
    const shown: string = form === 'N' && nutrient === 'ammonia' ? 'NH3-N' : (names[0] ?? form)
    return {
      answer: `${clear} ${shown}`,
      means: `as ${shown}`,
      factor: molarMass(canonical) / molarMass(form as Substance),
    }
  })
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}

/** Takes the form out of 'mg/L NO3', 'mg NO3/L', 'ppb P', 'mg/L as N'. */
function splitForm(dissolved: Dissolved, rest: string): { readonly unit: string; readonly form?: Form } {
  const words = rest.replace(/[()[\]]/g, ' ').split(/\s+|(?=\/)/)
  for (const [form, names] of Object.entries(dissolved.forms)) {
    const at = words.findIndex((word) => names.some((name) => name.toLowerCase() === word.toLowerCase()))
    if (at < 0) continue
    const others = words.filter((word, i) => i !== at && !(i === at - 1 && /^(?:as|of)$/i.test(word)))
    return { unit: others.join(''), form: form as Form }
  }
  return { unit: words.join('') }
}

/** 'mg/l', 'ug/L', 'umol/l', 'µM' and their like; only in µM and mM do capitals count. */
function concentrationUnit(written: string): ConcentrationUnit | undefined {
  if (/^[uµμ]M$/.test(written)) return 'µmol/L'
  if (written === 'mM') return 'mmol/L'
  const name = written
    .toLowerCase()
    .replace(/^[uμ]/, 'µ')
    .replace(/\/l(?:it(?:re|er))?$/, '/L')
  return accepted.find((unit) => unit === name)
}

function isMolar(unit: ConcentrationUnit): unit is keyof typeof molarUnits {
  return Object.hasOwn(molarUnits, unit)
}
