import { convert } from './convert.ts'
import { type Answer, type Asked, type Issue, type IssueCode, refused, understood } from './issue.ts'
import type { MilliequivalentsPerLitre } from './measured.ts'
import { molarMass } from './molar-masses.ts'
import { type NumberStyle, readFigure } from './number-text.ts'
import { lowest, mapStated, type Stated } from './stated.ts'
import { question } from './words.ts'

/** meq/L in one of each. CaCO3 binds two charges, HCO3 one. */
const units = {
  'meq/L': 1,
  dKH: convert(1, 'dKH', 'meq/L'),
  'ppm CaCO3': 2 / molarMass('CaCO3'),
  'ppm HCO3': 1 / molarMass('HCO3'),
  'mmol/L CaCO3': 2,
  'mmol/L HCO3': 1,
} as const

export type AlkalinityUnit = keyof typeof units

const accepted = Object.keys(units) as readonly AlkalinityUnit[]

export interface AlkalinityOptions extends NumberStyle {
  readonly where?: string
  /** The unit where the text has none. */
  readonly unit?: AlkalinityUnit
}

export interface Alkalinity {
  readonly stated: Stated<MilliequivalentsPerLitre>
  readonly unit: AlkalinityUnit
}

/** '8.4 dKH', '3 meq/L', '147 ppm CaCO3'; bare ppm and mmol/L are asked about, a factor of 1.2 and 2 apart. */
export function parseAlkalinity(text: string, options: AlkalinityOptions = {}): Answer<Alkalinity> {
  const where = options.where ?? 'Alkalinity'
  const got = text.trim()
  const issue = (code: IssueCode): Issue => ({ code, where, got, accepted, next: 'give-alkalinity' })
  const { stated, wrong, rest } = readFigure(text, options)
  if (wrong === 'empty') return refused(issue('empty'))
  const name = canonicalName(rest)
  const bare = name === 'ppm' || name === 'mmol/L' ? name : undefined
  const unit = rest === '' ? options.unit : accepted.find((known) => known === name)
  const issues: Issue[] = []
  if (wrong !== undefined) issues.push(issue(wrong))
  if (unit === undefined && bare === undefined) issues.push(issue(rest === '' ? 'no-unit' : 'unknown-unit'))
  if (stated !== undefined && (lowest(stated) ?? 0) < 0) issues.push(issue('negative'))
  if (stated === undefined || issues.length > 0) return refused(...issues)
  if (unit !== undefined)
    return understood({ stated: mapStated(stated, (value) => value * units[unit]), unit })
  return whichAlkalinity(where, got, got.slice(0, got.length - rest.length).trim(), bare ?? 'ppm')
}

/** meq/L as it reads in a unit. */
export function alkalinityIn(value: MilliequivalentsPerLitre, unit: AlkalinityUnit): number {
  return value / units[unit]
}

function whichAlkalinity(where: string, got: string, figure: string, bare: 'ppm' | 'mmol/L'): Asked {
  const code = 'which-alkalinity'
  const options = (['CaCO3', 'HCO3'] as const).map((substance) => ({
    answer: `${figure} ${bare} ${substance}`,
    means: substance === 'CaCO3' ? 'as calcium carbonate' : 'as bicarbonate, one charge each',
    factor: units[`${bare} ${substance}`],
  }))
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}

function canonicalName(written: string): string {
  const plain = written
    .toLowerCase()
    .replace(/\bas\b/, '')
    .replace(/[()]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  if (/^(?:°\s?)?d?kh$|^°\s?dkh$|^°\s?dh$|^dh$/.test(plain)) return 'dKH'
  if (/^(?:meq|mval)\s?\/\s?l$/.test(plain)) return 'meq/L'
  const found = /^(ppm|mg\s?\/\s?l|mmol\s?\/\s?l)(?: (caco3|hco3))?$/.exec(plain)
  if (found === null) return plain
  const amount = found[1]?.startsWith('mmol') ? 'mmol/L' : 'ppm'
  if (found[2] === undefined) return amount
  return `${amount} ${found[2] === 'caco3' ? 'CaCO3' : 'HCO3'}`
}
