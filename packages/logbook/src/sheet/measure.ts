import { convert } from '@holdfast/quantities'

import type { ReadQuantity } from '../entries/reading.ts'
import type { Header } from './read-header.ts'
import type { Answers, QuestionTopic } from './sheet.ts'
import {
  type SpecificGravityReference,
  salinityOfSpecificGravity,
  specificGravityReferences,
} from './specific-gravity.ts'

/** Turns a number as written into the canonical unit of its quantity. */
export type ToCanonical = (value: number) => number | undefined

/** Something that must be known before a column can be read. */
export interface Missing {
  readonly topic: QuestionTopic
  readonly question: string
  readonly options: readonly string[]
}

/** How to read a column, or what must be asked first. */
export type Measure =
  | { readonly ok: true; readonly toCanonical: ToCanonical; readonly unit: string; readonly form?: string }
  | { readonly ok: false; readonly missing: readonly Missing[] }

const forms: Readonly<
  Partial<Record<ReadQuantity, { readonly topic: QuestionTopic; readonly forms: readonly string[] }>>
> = {
  nitrate: { topic: 'nitrate-form', forms: ['NO3', 'N'] },
  nitrite: { topic: 'nitrite-form', forms: ['NO2', 'N'] },
  phosphate: { topic: 'phosphate-form', forms: ['PO4', 'P'] },
  ammonia: { topic: 'ammonia-form', forms: ['N', 'NH3', 'NH4'] },
}

const canonicalForm: Readonly<Partial<Record<ReadQuantity, string>>> = {
  nitrate: 'NO3',
  nitrite: 'NO2',
  phosphate: 'PO4',
  ammonia: 'N',
}

const massUnits = ['mg/L', 'µg/L']

/** What a column of a quantity measures, by its header and the answers given (by topic). */
export function measureOf(quantity: ReadQuantity, header: Header, answers: Answers): Measure {
  switch (quantity) {
    case 'pH':
      return { ok: true, toCanonical: (value) => value, unit: 'pH' }
    case 'temperature':
      return withUnit(header, answers, ['°C', '°F'], (unit) => (value) => convert(value, unit, '°C'))
    case 'salinity':
      return header.gravity ? gravity(header, answers) : salinity(header, answers)
    case 'alkalinity':
      return alkalinity(header, answers)
    case 'calcium':
    case 'magnesium':
      return mineral(quantity, header, answers)
    default:
      return nutrient(quantity, header, answers)
  }
}

function withUnit(
  { unit }: Header,
  answers: Answers,
  known: readonly string[],
  toCanonicalOf: (unit: string) => ToCanonical,
): Measure {
  const stated = known.find((one) => one === (unit ?? answers.unit))
  if (stated !== undefined) return { ok: true, toCanonical: toCanonicalOf(stated), unit: stated }
  const question = unit === undefined ? `No unit written: ${known[0]}?` : `${unit} does not fit: which unit?`
  return { ok: false, missing: [{ topic: 'unit', question, options: known }] }
}

function nutrient(quantity: ReadQuantity, header: Header, answers: Answers): Measure {
  const choice = forms[quantity]
  const target = canonicalForm[quantity]
  if (choice === undefined || target === undefined) throw new Error(`${quantity} is no nutrient`)
  const form = header.form ?? choice.forms.find((one) => one === answers[choice.topic])
  const byUnit = withUnit(header, answers, [...massUnits, 'µmol/L'], (unit) => {
    const [amount] = unit.split('/')
    return (value) => convert(value, `${amount} ${form ?? target}/L`, `mg ${target}/L`)
  })
  // A molar concentration is the same whatever form it is thought of in.
  if (form !== undefined || (byUnit.ok && byUnit.unit === 'µmol/L')) {
    return byUnit.ok ? { ...byUnit, ...(form !== undefined && { form }) } : byUnit
  }
  const [ion, atom] = choice.forms
  const missing: Missing = {
    topic: choice.topic,
    question: `${capital(quantity)} as ${ion} or as ${atom}? ${timesApart(ion, atom)} times apart.`,
    options: choice.forms,
  }
  return { ok: false, missing: [missing, ...(byUnit.ok ? [] : byUnit.missing)] }
}

function mineral(quantity: ReadQuantity, header: Header, answers: Answers): Measure {
  const own = quantity === 'calcium' ? 'Ca' : 'Mg'
  return withUnit(header, answers, massUnits, (unit) => {
    const [amount] = unit.split('/')
    return (value) => convert(value, `${amount} ${header.form ?? own}/L`, `mg ${own}/L`)
  })
}

function alkalinity(header: Header, answers: Answers): Measure {
  const stated = header.unit ?? answers.unit
  const asCarbonate = header.form === 'CaCO3' || stated === 'mg/L CaCO3'
  if (asCarbonate && (stated === undefined || stated.startsWith('mg/L'))) {
    // Calcium carbonate binds two charges.
    return {
      ok: true,
      toCanonical: (value) => 2 * convert(value, 'mg CaCO3/L', 'mmol CaCO3/L'),
      unit: 'mg/L',
      form: 'CaCO3',
    }
  }
  const unit = header.unit === 'dKH' || header.unit === 'meq/L' ? header.unit : undefined
  const known = unit === undefined ? withoutUnit(header) : header
  return withUnit(
    known,
    answers,
    ['dKH', 'meq/L', 'mg/L CaCO3'],
    (one) => (value) => convert(value, one, 'meq/L'),
  )
}

function salinity(header: Header, answers: Answers): Measure {
  const written = header.unit
  if (written === 'psu' || written === undefined) {
    return withUnit(header, answers, ['psu', 'g/kg'], (unit) =>
      unit === 'psu' ? (value) => value : fromAbsolute,
    )
  }
  const answer = answers['salinity-scale']
  if (answer === 'practical') return { ok: true, toCanonical: (value) => value, unit: written }
  if (answer === 'absolute (g/kg)') return { ok: true, toCanonical: fromAbsolute, unit: written }
  const question = `Salinity in ${written}: is it practical salinity or absolute (g/kg)?`
  return {
    ok: false,
    missing: [{ topic: 'salinity-scale', question, options: ['practical', 'absolute (g/kg)'] }],
  }
}

/** Practical from Absolute Salinity of standard composition: 35.16504 g/kg is 35 (Millero et al. 2008). */
const fromAbsolute = (value: number): number => (value * 35) / 35.16504

function gravity({ temperatures }: Header, answers: Answers): Measure {
  const known = Object.keys(specificGravityReferences) as SpecificGravityReference[]
  const stated = (temperatures ?? '').replaceAll(/[°c]/g, '')
  const reference = known.find((one) => one === stated || one === answers['sg-reference'])
  if (reference !== undefined) {
    const toCanonical: ToCanonical = (value) => salinityOfSpecificGravity(value, reference)
    return { ok: true, toCanonical, unit: `SG ${reference}` }
  }
  const question = 'Specific gravity at which temperatures? They stand on the instrument.'
  return { ok: false, missing: [{ topic: 'sg-reference', question, options: known }] }
}

function withoutUnit({ unit: _, ...header }: Header): Header {
  return header
}

const timesApart = (ion: string, atom: string): string =>
  Math.max(convert(1, `mg ${atom}/L`, `mg ${ion}/L`), convert(1, `mg ${ion}/L`, `mg ${atom}/L`)).toFixed(2)

const capital = (word: string): string => word.slice(0, 1).toUpperCase() + word.slice(1)
