import { convert } from './convert.ts'
import { whichFigure } from './figure-doubt.ts'
import { type Answer, type Asked, type Issue, type IssueCode, refused, understood } from './issue.ts'
import type { MilliequivalentsPerLitre } from './measured.ts'
import { molarMass } from './molar-masses.ts'
import { type NumberStyle, readFigure } from './number-text.ts'
import { isHeld, lowest, mapStated, type Stated } from './stated.ts'
import { question } from './words.ts'

/** meq/L in one of each; by the kilogram, meq/kg. CaCO3 binds two charges, HCO3 one. */
const units = {
  'meq/L': 1,
  dKH: convert(1, 'dKH', 'meq/L'),
  'ppm CaCO3': 2 / molarMass('CaCO3'),
  'ppm HCO3': 1 / molarMass('HCO3'),
  'mmol/L CaCO3': 2,
  'mmol/L HCO3': 1,
  'meq/kg': 1,
  'µmol/kg CaCO3': 2e-3,
  'µmol/kg HCO3': 1e-3,
} as const

export type AlkalinityUnit = keyof typeof units

export const alkalinityUnits = Object.keys(units) as readonly AlkalinityUnit[]

/** Units that do not say whether they count carbonate or charges. */
const bareUnits = ['ppm', 'mmol/L', 'µmol/kg'] as const
type BareUnit = (typeof bareUnits)[number]

export interface AlkalinityOptions extends NumberStyle {
  readonly where?: string
  /** The unit where the text has none. */
  readonly unit?: AlkalinityUnit
  /** Step of the chart or the drop, in the unit of the text. */
  readonly step?: number
  /** Density of the water, kg/L, for units by the kilogram. */
  readonly density?: number
}

/** A reading, with text and unit as typed beside the canonical value. */
export interface Alkalinity {
  readonly text: string
  readonly stated: Stated<MilliequivalentsPerLitre>
  readonly unit: AlkalinityUnit
  readonly step?: MilliequivalentsPerLitre
}

/**
 * Alkalinity with its unit; bare ppm, mmol/L and µmol/kg are asked about, a factor of 1.2 or 2 apart.
 *
 * @example parseAlkalinity('8,4 °dKH') // 2.996 meq/L
 * @example parseAlkalinity('1.5 mmol/L') // asks whether of CaCO3 or of HCO3
 */
export function parseAlkalinity(text: string, options: AlkalinityOptions = {}): Answer<Alkalinity> {
  const where = options.where ?? 'Alkalinity'
  const got = text.trim()
  const issue = (code: IssueCode): Issue => {
    const next = code === 'needs-density' ? 'tell-density' : 'give-alkalinity'
    return { code, where, got, accepted: alkalinityUnits, next }
  }
  const found = readFigure(text, options)
  const { stated, figure, rest } = found
  if (found.wrong === 'empty') return refused(issue('empty'))
  const name = canonicalName(rest)
  const bare = bareUnits.find((one) => one === name)
  const isNothing = stated?.is === 'not detected'
  const unit =
    rest === ''
      ? (options.unit ?? (isNothing ? 'meq/L' : undefined))
      : (alkalinityUnits.find((known) => known === name) ?? (isNothing && bare ? 'meq/L' : undefined))
  const issues: Issue[] = []
  if (found.wrong !== undefined) issues.push(issue(found.wrong))
  if (unit === undefined && bare === undefined) issues.push(issue(rest === '' ? 'no-unit' : 'unknown-unit'))
  const isByWeight = (bare ?? unit ?? '').includes('/kg')
  if (isByWeight && !isDensity(options.density)) issues.push(issue('needs-density'))
  if (stated !== undefined && (lowest(stated) ?? 0) < 0) issues.push(issue('negative'))
  if (stated === undefined || issues.length > 0) return refused(...issues)
  const ask = whichFigure(found, { where, got, written: rest === '' ? (options.unit ?? '') : rest }, options)
  if (ask !== undefined) return ask
  if (unit === undefined) return whichAlkalinity(where, got, figure, bare ?? 'ppm')
  const factor = inLitre(unit, options.density)
  const value = mapStated(stated, (typed) => typed * factor)
  if (!isHeld(value)) return refused(issue('too-large'))
  const step = options.step === undefined ? {} : { step: options.step * factor }
  return understood({ text: got, stated: value, unit, ...step })
}

/**
 * meq/L as it reads in a unit.
 *
 * @param density  of the water, kg/L, for units by the kilogram
 * @throws RangeError for a unit by the kilogram without a density
 * @example alkalinityIn(1, 'dKH') // 2.804
 */
export function alkalinityIn(
  value: MilliequivalentsPerLitre,
  unit: AlkalinityUnit,
  density?: number,
): number {
  return value / inLitre(unit, density)
}

function inLitre(unit: AlkalinityUnit, density: number | undefined): number {
  if (!unit.includes('/kg')) return units[unit]
  if (density === undefined || !isDensity(density))
    throw new RangeError(`${unit} needs the density of the water`)
  return units[unit] * density
}

function isDensity(density: number | undefined): boolean {
  return density !== undefined && Number.isFinite(density) && density > 0
}

function whichAlkalinity(where: string, got: string, figure: string, bare: BareUnit): Asked {
  const code = 'which-alkalinity'
  const options = (['CaCO3', 'HCO3'] as const).map((substance) => ({
    answer: `${figure} ${bare} ${substance}`,
    means: substance === 'CaCO3' ? 'as calcium carbonate' : 'as bicarbonate, one charge each',
    // by the kilogram the density comes in too
    ...(bare !== 'µmol/kg' && { factor: units[`${bare} ${substance}`] }),
  }))
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}

function canonicalName(written: string): string {
  const plain = written
    .toLowerCase()
    .replace(/\bas\b/, '')
    .replace(/[()]/g, ' ')
    .replace(/₃/g, '3')
    .replace(/[·*]?\s?(l|kg)(?:⁻¹|\^?-1)/, '/$1')
    .replace(/\s*\/\s*/, '/')
    .replace(/\s+/g, ' ')
    .trim()
  if (/^(?:(?:°\s?)?(?:d?kh|dh)|°\s?d)$/.test(plain)) return 'dKH'
  const charges = /^(?:meq|mval|meqv)\/(l|kg)$/.exec(plain)
  if (charges !== null) return charges[1] === 'l' ? 'meq/L' : 'meq/kg'
  const found = /^(ppm|mg\/l|mmol\/l|[uµ]mol\/kg)(?: (caco3|calcium carbonate|hco3-?|bicarbonate))?$/.exec(
    plain,
  )
  const [, amount = '', substance] = found ?? []
  const unit = { 'mmol/l': 'mmol/L', 'umol/kg': 'µmol/kg', 'µmol/kg': 'µmol/kg' }[amount] ?? 'ppm'
  if (found === null) return plain
  if (substance === undefined) return unit
  return `${unit} ${substance.startsWith('ca') ? 'CaCO3' : 'HCO3'}`
}
