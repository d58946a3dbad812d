import { type Answer, type Reading, readFigure, referenceTemperatures } from '@holdfast/quantities'

import type { ReadQuantity } from '../../entries/reading.ts'
import type { QuestionTopic } from '../sheet.ts'
import { type Measure, optionsOf } from './measure.ts'
import { readAs } from './to-canonical.ts'

/** Something that must be known before a value can be read. */
export interface Missing {
  readonly topic: QuestionTopic
  readonly question: string
  readonly options: readonly string[]
}

/** What a header leaves open though the figure could be read. */
export function doubtsOf(measure: Measure, unit: string, isOwn: boolean): readonly Missing[] {
  const { unitInDoubt, salinityScale } = measure
  const doubts: Missing[] = []
  if (unitInDoubt !== undefined && !isOwn) {
    const question = `"${measure.unit}" below a title that names another unit: ${unitInDoubt.join(' or ')}?`
    doubts.push({ topic: 'unit', question, options: unitInDoubt })
  }
  if (/^g\/kg$/i.test(unit) && salinityScale === undefined) {
    const question = 'Salinity in g/kg: taken as practical salinity, as instruments print it, or as absolute?'
    doubts.push({ topic: 'salinity-scale', question, options: ['practical', 'absolute (g/kg)'] })
  }
  return doubts
}

/** What a figure of a series asks for, whichever the figure is. */
export function missingFor(measure: Measure, figure: string): readonly Missing[] {
  const answer = readAs(measure.quantity, figure, optionsOf(measure))
  if (answer.ok) return doubtsOf(measure, answer.value.unit, false)
  return missingIn(answer, measure, figure) ?? []
}

const unitChoices: Readonly<Partial<Record<ReadQuantity, readonly string[]>>> = {
  alkalinity: ['dKH', 'meq/L', 'ppm CaCO3'],
  temperature: ['°C', '°F'],
  salinity: ['psu', 'SG', 'mS/cm'],
}
const usualUnits = ['mg/L', 'µg/L', 'µmol/L']

/** What an answer of quantities leaves open; undefined where it is no question but a fault. */
export function missingIn(
  answer: Exclude<Answer<Reading>, { ok: true }>,
  measure: Measure,
  text: string,
): readonly Missing[] | undefined {
  const { quantity } = measure
  const name = quantity === 'pH' ? quantity : `${quantity.slice(0, 1).toUpperCase()}${quantity.slice(1)}`
  if (answer.issues?.some(({ code }) => code === 'no-unit')) {
    const options = unitChoices[quantity] ?? usualUnits
    const unit: Missing = { topic: 'unit', question: `${name} without a unit: ${options[0]}?`, options }
    const { figure } = readFigure(text, { decimal: '.' })
    const withUnit = readAs(quantity, figure, { ...optionsOf(measure), unit: options[0] ?? '' })
    const more = withUnit.ok ? [] : (missingIn(withUnit, measure, text) ?? [])
    return [unit, ...more.filter(({ topic }) => topic !== 'unit')]
  }
  const { ask } = answer
  if (ask === undefined) return undefined
  switch (ask.code) {
    case 'which-form': {
      const options = ask.options.map(({ means }) => means.replace(/^as /, '').replace(/^.*-/, ''))
      const factors = ask.options.flatMap(({ factor }) => factor ?? [])
      const apart = (Math.max(...factors) / Math.min(...factors)).toFixed(2)
      const question = `${name}: as ${options.join(' or as ')}? Up to ${apart} times apart; the kit or its leaflet says which.`
      return [{ topic: `${quantity}-form` as QuestionTopic, question, options }]
    }
    case 'which-alkalinity': {
      const unit = readFigure(ask.options[0]?.answer ?? '').rest.replace(/\s*\S+$/, '')
      const options = ['CaCO3', 'HCO3'].map((one) => `${unit} ${one}`)
      return [
        {
          topic: 'unit',
          question: `Alkalinity in ${unit}: of calcium carbonate or of bicarbonate?`,
          options,
        },
      ]
    }
    case 'which-reference-temperatures': {
      const question = 'Specific gravity at which two temperatures? They stand on the instrument.'
      return [{ topic: 'sg-reference', question, options: referenceTemperatures }]
    }
    case 'which-conductivity-temperature': {
      const question = 'Conductivity: worked out by the meter for 25 °C?'
      return [{ topic: 'unit', question, options: ['mS/cm at 25 °C', 'µS/cm at 25 °C'] }]
    }
    default:
      return undefined
  }
}
