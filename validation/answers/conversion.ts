/** A figure or a reading of the log in another form or unit. */
import { molarMass, type Substance } from '@holdfast/quantities'
import { CannotAnswer, type Family, needed, numberIn, type Question, textIn } from './answer.ts'
import { inUnit, quantityOfForm, readingAt, substanceOf, unitOf } from './readings.ts'

export const conversionAnswers: Family = {
  converted_value: {
    unit: 'as asked',
    keys: [
      'value',
      'from',
      'to',
      'unit',
      'form',
      'from_unit',
      'from_form',
      'to_unit',
      'to_form',
      'of',
      'reading',
      'date',
    ],
    answer: (question) => {
      const from = source(question)
      const to = target(question, from.quantity)
      return { value: (inUnit(from.value, from.unit, to.unit) * from.factor) / to.factor }
    },
  },
}

/** A unit that `convert` knows, and what a figure in it is worth. */
interface Scale {
  readonly unit: string
  readonly factor: number
}

function source(question: Question): Scale & { readonly value: number; readonly quantity?: string } {
  const { check, file } = question
  const value = numberIn(check, 'value')
  const of = textIn(check, 'of', 'reading')
  if (value !== undefined) {
    const words = [
      textIn(check, 'from'),
      textIn(check, 'unit', 'from_unit'),
      textIn(check, 'form', 'from_form'),
    ]
    return { value, ...scaleOf(joined(words, 'from'), of), ...(of === undefined ? {} : { quantity: of }) }
  }
  const reading = readingAt(file, needed(of, 'value, or of and date of a reading'), textIn(check, 'date'))
  const words = [reading.unit, reading.form]
  return {
    value: reading.value,
    ...scaleOf(joined(words, 'unit'), reading.quantity),
    quantity: reading.quantity,
  }
}

function target({ check }: Question, quantity: string | undefined): Scale {
  const words = [textIn(check, 'to'), textIn(check, 'to_unit'), textIn(check, 'to_form')]
  return scaleOf(joined(words, 'to'), quantity)
}

function joined(words: readonly (string | undefined)[], key: string): string {
  const said = words.filter((word) => word !== undefined)
  if (said.length === 0) throw new CannotAnswer(`needs ${key}`)
  return said.join(' ')
}

const concentrationUnit = /(?:^|[\s_])((?:[numµμ]?(?:g|mol|M|eq)(?:\/|_| per )?L?)|ppm|ppb|dKH)(?=$|[\s_])/

/** 'NO3-N_mg_L', 'mg/L as N', 'ppb P', 'meq/L', 'degC': unit and form in either order, joined by anything. */
function scaleOf(text: string, quantity: string | undefined): Scale {
  const words = text
    .trim()
    .replace(/\(|\)|,/g, ' ')
    .replace(/\s+/g, ' ')
  if (/^(deg|°)\s?[CF]$/i.test(words))
    return { unit: words.replace(/^(deg|°)\s?/i, '°').toUpperCase(), factor: 1 }
  if (/^(gal_US|US gal)$/i.test(words)) return { unit: 'US gal', factor: 1 }
  const unit = words.match(concentrationUnit)?.[1]
  const form = (unit === undefined ? words : words.replace(unit, ' '))
    .replace(/\bas\b|_/gi, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  // A form alone is in mg/L, as a case gives its readings.
  const said = tidied(unit ?? (form === words ? 'mg/L' : words))
  if (/CaCO3/.test(form)) return { unit: 'meq/L', factor: 2 / molarMass('CaCO3') }
  if (/eq|dKH/.test(said) || form === '') return { unit: said, factor: 1 }
  return { unit: unitOf(said, substanceIn(form, quantity)), factor: 1 }
}

function tidied(unit: string): string {
  return unit.replace(/(?:_| per )L$/, '/L')
}

function substanceIn(form: string, quantity: string | undefined): Substance {
  const of = quantity ?? quantityOfForm(form)
  const found = of === undefined ? undefined : substanceOf(of, form)
  if (found !== undefined) return found
  throw new CannotAnswer(`a form that names its ion or atom; "${form}" does not`)
}
