import { type Answer, type Asked, type Issue, type IssueCode, refused, understood } from './issue.ts'
import { type NumberStyle, readFigure } from './number-text.ts'
import { question } from './words.ts'

/** Sample and reference temperature of a specific gravity; the same water reads differently under each. */
export const referenceTemperatures = ['25/25 °C', '60/60 °F', '20/4 °C', '25/4 °C'] as const

export type ReferenceTemperatures = (typeof referenceTemperatures)[number]

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

const accepted = ['psu', 'ppt', 'g/kg', ...referenceTemperatures.map((reference) => `SG ${reference}`)]

/** '35 psu', '34.5 ppt', '1.0259 SG 25/25 °C'; a specific gravity without its temperatures is asked about. */
export function parseSalinity(text: string, options: SalinityOptions = {}): Answer<Salinity> {
  const where = options.where ?? 'Salinity'
  const got = text.trim()
  const issue = (code: IssueCode): Issue => ({ code, where, got, accepted, next: 'give-salinity' })
  const { stated, wrong, rest } = readFigure(text, options)
  if (wrong === 'empty') return refused(issue('empty'))
  const issues: Issue[] = []
  if (wrong !== undefined) issues.push(issue(wrong))
  const written = rest === '' ? (options.unit ?? '') : rest
  const unit = salinityUnit(written)
  if (unit === undefined) issues.push(issue(written === '' ? 'no-unit' : 'unknown-unit'))
  if (stated !== undefined && stated.is !== 'exact' && stated.is !== 'about')
    issues.push(issue('not-one-number'))
  else if (stated !== undefined && stated.value < 0) issues.push(issue('negative'))
  if (stated === undefined || !('value' in stated) || unit === undefined || issues.length > 0)
    return refused(...issues)
  if (unit !== 'SG') return understood({ scale: 'practical', psu: stated.value, unit })
  const reference = referenceIn(written) ?? options.reference
  if (reference !== undefined)
    return understood({ scale: 'specific gravity', specificGravity: stated.value, reference })
  return whichReference(where, got, rest === '' ? got : got.slice(0, got.length - rest.length).trim())
}

function salinityUnit(written: string): 'psu' | 'ppt' | 'g/kg' | 'SG' | undefined {
  const plain = written.toLowerCase().replace(/\s+/g, '')
  if (plain === 'psu' || plain === 'ppt' || plain === 'g/kg') return plain
  if (plain === '‰') return 'ppt'
  const temperatures = plain.replace(/^(?:sg|s\.g\.|specificgravity)/, '')
  if (temperatures === '') return plain === '' ? undefined : 'SG'
  return referenceIn(temperatures) === undefined ? undefined : 'SG'
}

function referenceIn(written: string): ReferenceTemperatures | undefined {
  const temperatures = /(\d+)°?[cf]?\/(\d+)°?([cf]?)$/i.exec(written.replace(/\s+/g, ''))
  if (temperatures === null) return undefined
  return referenceTemperatures.find((known) => {
    const [pair = '', degrees = ''] = known.split(' ')
    const scale = temperatures[3]?.toUpperCase() ?? ''
    return pair === `${temperatures[1]}/${temperatures[2]}` && (scale === '' || degrees === `°${scale}`)
  })
}

function whichReference(where: string, got: string, figure: string): Asked {
  const code = 'which-reference-temperatures'
  const options = referenceTemperatures.map((reference) => ({
    answer: `${figure} SG ${reference}`,
    means: `sample and reference at ${reference}`,
  }))
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}
