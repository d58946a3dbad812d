import { alkalinityUnits, parseAlkalinity } from './alkalinity.ts'
import { type ConcentrationUnit, concentrationUnits, isMolar } from './concentration-units.ts'
import { parseConcentration } from './dissolved.ts'
import { dissolved, type Form, formNamed, type Mineral, type Nutrient } from './dissolved-forms.ts'
import { type Answer, understood } from './issue.ts'
import { dailyLight, light } from './light.ts'
import { type Measure, readMeasure } from './measure.ts'
import { area, density, duration, flow, length, mass, power, temperature, volume } from './measures.ts'
import { readFigure } from './number-text.ts'
import type { Reading, ReadingOptions } from './reading.ts'
import { gravities, readSalinity, salinityUnits } from './salinity.ts'

/** Something that is measured and typed, with every way to write it. */
export interface Quantity {
  /** In the keeper's words. */
  readonly title: string
  /** Unit, with its form, in which the project keeps it. */
  readonly canonical: string
  readonly units: readonly string[]
  /** Forms that a mass may be given in; empty where there is nothing to tell. */
  readonly forms: readonly string[]
  /** Units with their forms that a figure is shown in beside its own. */
  readonly common: readonly string[]
  readonly read: (text: string, options?: ReadingOptions) => Answer<Reading>
}

/** ppm and ppb would show the figures of mg/L and µg/L again. */
const commonUnits = ['mg/L', 'µg/L', 'µmol/L', 'mmol/L', 'mg/kg', 'µmol/kg'] as const

/** Everything that can be read and converted: a line each. */
export const quantities = {
  volume: ofMeasure(volume),
  length: ofMeasure(length),
  area: ofMeasure(area),
  mass: ofMeasure(mass),
  temperature: ofMeasure(temperature),
  duration: ofMeasure(duration),
  flow: ofMeasure(flow),
  power: ofMeasure(power),
  density: ofMeasure(density),
  light: ofMeasure(light),
  'daily-light': ofMeasure(dailyLight),
  nitrate: ofDissolved('nitrate'),
  nitrite: ofDissolved('nitrite'),
  ammonia: ofDissolved('ammonia'),
  phosphate: ofDissolved('phosphate'),
  silicate: ofDissolved('silicate'),
  calcium: ofDissolved('calcium'),
  magnesium: ofDissolved('magnesium'),
  potassium: ofDissolved('potassium'),
  alkalinity: {
    title: 'Alkalinity',
    canonical: 'meq/L',
    units: alkalinityUnits,
    forms: ['CaCO3', 'HCO3'],
    common: alkalinityUnits,
    read: readAlkalinity,
  },
  salinity: {
    title: 'Salinity',
    canonical: 'psu',
    units: [...salinityUnits, 'mS/cm at 25 °C', 'µS/cm at 25 °C'],
    forms: [],
    common: ['psu', ...gravities, 'mS/cm at 25 °C'],
    read: readSalinity,
  },
} as const satisfies Record<string, Quantity>

export type QuantityName = keyof typeof quantities

export const quantityNames = Object.keys(quantities) as readonly QuantityName[]

export function isQuantityName(name: string): name is QuantityName {
  return Object.hasOwn(quantities, name)
}

/**
 * Any quantity as it was typed, with its canonical value.
 *
 * @example readQuantity('nitrate', '<0.5 mg/L NO3') // below 0.5 mg/L NO3, with what was typed
 * @example readQuantity('volume', '16 gal') // asks which gallon
 */
export function readQuantity(name: QuantityName, text: string, options?: ReadingOptions): Answer<Reading> {
  return quantities[name].read(text, options)
}

function ofMeasure(measure: Measure): Quantity {
  const { where, canonical, accepted } = measure
  const read: Quantity['read'] = (text, options) => readMeasure(measure, text, options)
  return { title: where, canonical, units: accepted, forms: [], common: accepted, read }
}

function ofDissolved(name: Nutrient | Mineral): Quantity {
  const kind = dissolved[name]
  const shown = (form: Form): string => kind.forms.find((one) => one.form === form)?.shown ?? form
  const canonical = `mg/L ${shown(kind.canonical)}`
  const forms = kind.forms.map((one) => one.shown)
  const inForms = (unit: ConcentrationUnit): readonly string[] =>
    isMolar(unit) ? [unit] : forms.map((form) => `${unit} ${form}`)
  const read: Quantity['read'] = (text, options = {}) => {
    const { unit, form, ...rest } = options
    // 'as N' and 'nitrogen' are said of a form too
    const bare = form?.replace(/^as\s+/i, '') ?? ''
    const named = (formNamed(kind, bare) ?? formNamed(kind, `as ${bare}`))?.form
    // a form that is none is left to be refused with the text
    const typed = withUnit(text, options, named === undefined ? form : undefined)
    const answer = parseConcentration(name, typed, { ...rest, ...(named && { form: named }) })
    if (!answer.ok) return answer
    const { form: found, ...reading } = answer.value
    return understood({ ...reading, text: text.trim(), canonical, ...(found && { form: shown(found) }) })
  }
  const common = commonUnits.flatMap(inForms)
  return { title: kind.where, canonical, units: concentrationUnits, forms, common, read }
}

function readAlkalinity(text: string, options: ReadingOptions = {}): Answer<Reading> {
  const { unit: _, form, ...rest } = options
  const typed = withUnit(text, options)
  const formed = form === undefined ? undefined : parseAlkalinity(`${typed} ${form}`, rest)
  // 'dKH CaCO3' is no unit: there the unit says it all
  const isUnit = formed?.issues?.every(({ code }) => code !== 'unknown-unit') ?? formed !== undefined
  const answer = formed !== undefined && isUnit ? formed : parseAlkalinity(typed, rest)
  return answer.ok ? understood({ ...answer.value, text: text.trim(), canonical: 'meq/L' }) : answer
}

/** The text with the unit of its place behind a bare figure, and with a form where one is to be read with it. */
function withUnit(text: string, options: ReadingOptions, form = ''): string {
  const { wrong, rest } = readFigure(text, options)
  if (wrong !== undefined) return text
  const unit = rest === '' ? (options.unit ?? '') : ''
  return [text.trim(), unit, form].filter((part) => part !== '').join(' ')
}
