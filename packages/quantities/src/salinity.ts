import { atTemperature, conductivityUnit, whichConductivityTemperature } from './conductivity.ts'
import { whichFigure } from './figure-doubt.ts'
import { type Answer, type Asked, type Issue, type IssueCode, refused, understood } from './issue.ts'
import { type NumberStyle, readFigure } from './number-text.ts'
import type { Reading, ReadingOptions } from './reading.ts'
import { type ReferenceTemperatures, referenceIn, referenceTemperatures } from './reference-temperatures.ts'
import { isHeld, lowest, mapStated, oneNumber, type Stated } from './stated.ts'
import { question } from './words.ts'

/**
 * Salinity as measured. Parts per thousand and g/kg, as hobby instruments print them, are taken as practical
 * salinity (common practice; the mass fraction of sea salt is about 0.5 % higher). A specific gravity stays
 * what it is: turning it into salinity needs the equation of state.
 */
export type Salinity =
  | { readonly scale: 'practical'; readonly psu: number; readonly unit: 'psu' | 'ppt' | 'g/kg' }
  | {
      readonly scale: 'specific gravity'
      readonly specificGravity: number
      readonly reference: ReferenceTemperatures
    }

export interface SalinityOptions extends NumberStyle {
  readonly where?: string
  /** Where the text has no unit. */
  readonly unit?: 'psu' | 'ppt' | 'g/kg' | 'SG'
  /** Of specific gravities that name none. */
  readonly reference?: ReferenceTemperatures
}

/** Specific gravities that we know, as they are shown. */
export const gravities = referenceTemperatures.map((reference) => `SG ${reference}`)

export const salinityUnits: readonly string[] = ['psu', 'ppt', 'g/kg', ...gravities]

/**
 * Salinity as one number; a specific gravity without its temperatures is asked about, and a conductivity is
 * refused: `readSalinity` takes it.
 *
 * @example parseSalinity('34,5 ppt') // practical, 34.5
 * @example parseSalinity('1.026 SG') // asks at which temperatures, up to 4 psu apart
 */
export function parseSalinity(text: string, options: SalinityOptions = {}): Answer<Salinity> {
  const answer = readSalinity(text, options, 'one number')
  if (!answer.ok) return answer
  const value = oneNumber(answer.value.stated)
  const unit = scaleOf(answer.value.unit)
  const reference = referenceIn(answer.value.unit)
  if (value === undefined || unit === undefined) throw new Error(`"${text}" was taken for one salinity`)
  if (unit !== 'SG') return understood({ scale: 'practical', psu: value, unit })
  if (reference === undefined) throw new Error(`"${text}" was taken without its temperatures`)
  return understood({ scale: 'specific gravity', specificGravity: value, reference })
}

/**
 * Salinity as it was stated, on the scale on which it was measured: the canonical unit of the reading is
 * 'psu', 'SG 25/25 °C' or 'mS/cm at 25 °C' with the temperatures that were named.
 *
 * @example readSalinity('34-35 psu') // between 34 and 35 psu
 * @example readSalinity('53 mS/cm') // asks for the temperature
 */
export function readSalinity(
  text: string,
  options: ReadingOptions = {},
  takes: 'one number' | 'limits and spans' = 'limits and spans',
): Answer<Reading> {
  const where = options.where ?? 'Salinity'
  const got = text.trim()
  const issue = (code: IssueCode): Issue => ({
    code,
    where,
    got,
    accepted: salinityUnits,
    next: 'give-salinity',
  })
  const found = readFigure(text, options)
  const { stated, figure, rest } = found
  if (found.wrong === 'empty') return refused(issue('empty'))
  const written = rest === '' ? (options.unit ?? '') : rest
  const scale = scaleOf(written)
  const conductivity = conductivityUnit(written)
  const issues: Issue[] = []
  if (found.wrong !== undefined) issues.push(issue(found.wrong))
  if (conductivity !== undefined && takes === 'one number') issues.push(issue('needs-sea-water'))
  else if (scale === undefined && conductivity === undefined)
    issues.push(issue(written === '' ? 'no-unit' : 'unknown-unit'))
  const wrong = stated && outOfReach(stated, takes)
  if (wrong !== undefined) issues.push(issue(wrong))
  if (stated === undefined || issues.length > 0) return refused(...issues)

  const kept = (canonical: string, unit: string, factor = 1): Answer<Reading> => {
    const value = mapStated(stated, (typed) => typed * factor)
    if (!isHeld(value)) return refused(issue('too-large'))
    const step = options.step === undefined ? {} : { step: options.step * factor }
    return understood({ text: got, stated: value, canonical, unit, ...step })
  }
  // no gravity is above 2, so that its comma parts no thousands
  const ask =
    scale === 'SG' && found.doubt === 'comma'
      ? undefined
      : whichFigure(found, { where, got, written }, options)
  if (ask !== undefined) return ask
  if (conductivity !== undefined) {
    const { factor, shown } = conductivity
    const temperature = conductivity.temperature ?? options.temperature
    if (temperature === undefined) return whichConductivityTemperature(where, got, `${figure} ${shown}`)
    return kept(atTemperature(temperature), shown, factor)
  }
  if (scale !== 'SG') return kept('psu', scale ?? written)
  const reference = referenceIn(written) ?? referenceIn(options.reference ?? '')
  if (reference === undefined) return whichReference(where, got, figure)
  return kept(`SG ${reference}`, `SG ${reference}`)
}

function outOfReach(stated: Stated, takes: 'one number' | 'limits and spans'): IssueCode | undefined {
  if (stated.is === 'not detected') return 'not-one-number'
  if (takes === 'one number' && oneNumber(stated) === undefined) return 'not-one-number'
  return (lowest(stated) ?? 0) < 0 ? 'negative' : undefined
}

function scaleOf(written: string): 'psu' | 'ppt' | 'g/kg' | 'SG' | undefined {
  const plain = written.toLowerCase().replace(/\s+/g, '')
  if (plain === 'psu' || plain === 'pss' || plain === 'pss-78') return 'psu'
  if (plain === 'ppt' || plain === 'g/kg') return plain
  if (plain === '‰') return 'ppt'
  const temperatures = plain.replace(/^(?:sg|s\.g\.|specificgravity)/, '')
  if (temperatures === '') return plain === '' ? undefined : 'SG'
  return referenceIn(temperatures) === undefined ? undefined : 'SG'
}

function whichReference(where: string, got: string, figure: string): Asked {
  const code = 'which-reference-temperatures'
  const options = referenceTemperatures.map((reference) => ({
    answer: `${figure} SG ${reference}`,
    means: `sample and reference at ${reference}`,
  }))
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}
