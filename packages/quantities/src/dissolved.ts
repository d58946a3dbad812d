import {
  type ConcentrationUnit,
  concentrationUnit,
  concentrationUnits,
  isByWeight,
  isMolar,
  sizeOf,
} from './concentration-units.ts'
import {
  type Dissolved,
  dissolved,
  type Form,
  formNamed,
  type Mineral,
  type Nutrient,
} from './dissolved-forms.ts'
import { whichFigure } from './figure-doubt.ts'
import { type Answer, type Asked, type Issue, type IssueCode, refused, understood } from './issue.ts'
import type { MilligramsPerLitre } from './measured.ts'
import { molarMass } from './molar-masses.ts'
import { type NumberStyle, readFigure } from './number-text.ts'
import { isHeld, lowest, mapStated, type Stated } from './stated.ts'
import { question } from './words.ts'

export interface ConcentrationOptions extends NumberStyle {
  readonly where?: string
  /** Unit and form where the text has none, such as those of the column; the text comes first. */
  readonly unit?: ConcentrationUnit
  readonly form?: Form
  /** Step of the chart or display, in the unit and form of the text. */
  readonly step?: number
  /** Density of the water, kg/L, for units by the kilogram. */
  readonly density?: number
}

/** A reading, with text, unit and form as typed beside the canonical value. */
export interface Concentration {
  readonly text: string
  /** mg/L as the canonical form: NO3, NO2, PO4, SiO2, Ca, Mg, K, and N for total ammonia. */
  readonly stated: Stated<MilligramsPerLitre>
  readonly unit: ConcentrationUnit
  /** Absent where the unit counts moles, and where nothing was found and no form named. */
  readonly form?: Form
  /** Step of the chart or display, mg/L as the canonical form. */
  readonly step?: MilligramsPerLitre
}

/**
 * A concentration with unit and form. A mass of nitrate, nitrite, ammonia, phosphate or silicate without its
 * form is asked about; calcium, magnesium and potassium are elements, and a bare mass is of the element.
 *
 * @example parseConcentration('nitrate', '1.1 mg/L NO3-N') // exactly 4.87 mg/L NO3
 * @example parseConcentration('phosphate', '<0,03 ppm PO4') // below 0.03 mg/L PO4
 * @example parseConcentration('nitrate', '5 mg/L') // asks which form, 4.43 apart
 */
export function parseConcentration(
  quantity: Nutrient | Mineral,
  text: string,
  options: ConcentrationOptions = {},
): Answer<Concentration> {
  const kind = dissolved[quantity]
  const where = options.where ?? kind.where
  const got = text.trim()
  const issue = (code: IssueCode): Issue => {
    const next = code === 'needs-density' ? 'tell-density' : kind.next
    return { code, where, got, accepted: concentrationUnits, next }
  }
  const found = readFigure(text, options)
  const { stated, rest, figure } = found
  if (found.wrong === 'empty') return refused(issue('empty'))

  const written = splitForm(kind, rest)
  const isNothing = stated?.is === 'not detected'
  const bare = options.unit ?? (isNothing ? 'mg/L' : undefined)
  const unit = written.unit === '' ? bare : concentrationUnit(written.unit)
  const issues: Issue[] = []
  if (found.wrong !== undefined) issues.push(issue(found.wrong))
  if (unit === undefined) issues.push(issue(written.unit === '' ? 'no-unit' : 'unknown-unit'))
  else if (isByWeight(unit) && !isDensity(options.density)) issues.push(issue('needs-density'))
  if (stated !== undefined && (lowest(stated) ?? 0) < 0) issues.push(issue('negative'))
  if (stated === undefined || unit === undefined || issues.length > 0) return refused(...issues)

  const form = written.form ?? options.form ?? kind.bare
  if (form !== undefined && !hasForm(kind, form)) return refused(issue('unknown-unit'))
  const { step, ...style } = options
  // the first mark of a chart is a limit only in a unit
  const isUnitTold = written.unit !== '' || options.unit !== undefined
  const place = { where, got, written: rest === '' ? (options.unit ?? '') : rest }
  const ask = whichFigure(found, place, isUnitTold ? options : style)
  if (ask !== undefined) return ask
  if (!isMolar(unit) && form === undefined && !isNothing)
    return whichForm(kind, where, got, `${figure} ${unit}`)
  const factor = toCanonical(kind, unit, form ?? kind.canonical, options.density)
  const value = mapStated(stated, (typed) => typed * factor)
  if (!isHeld(value)) return refused(issue('too-large'))
  return understood({
    text: got,
    stated: value,
    unit,
    ...(!isMolar(unit) && form !== undefined && { form }),
    ...(step !== undefined && { step: step * factor }),
  })
}

/**
 * A canonical value (mg/L) as it reads in a unit and form; molar units take no notice of the form.
 *
 * @param density  of the water, kg/L, for units by the kilogram
 * @throws RangeError for a unit by the kilogram without a density
 * @example concentrationIn('nitrate', 5, 'mg/L', 'N') // 1.1295
 */
export function concentrationIn(
  quantity: Nutrient | Mineral,
  value: MilligramsPerLitre,
  unit: ConcentrationUnit,
  form: Form,
  density?: number,
): number {
  return value / toCanonical(dissolved[quantity], unit, form, density)
}

/** mg/L in the canonical form for 1 of the unit. */
function toCanonical(kind: Dissolved, unit: ConcentrationUnit, form: Form, density?: number): number {
  if (isByWeight(unit) && !isDensity(density)) throw new RangeError(`${unit} needs the density of the water`)
  const perLitre = sizeOf(unit) * (isByWeight(unit) ? (density ?? 1) : 1)
  return (perLitre * molarMass(kind.canonical)) / (isMolar(unit) ? 1 : molarMass(form))
}

function isDensity(density: number | undefined): boolean {
  return density !== undefined && Number.isFinite(density) && density > 0
}

function hasForm({ forms }: Dissolved, form: Form): boolean {
  return forms.some((one) => one.form === form)
}

function whichForm(
  { forms, canonical, asks = 'which-form' }: Dissolved,
  where: string,
  got: string,
  clear: string,
): Asked {
  const options = forms.map(({ form, shown }) => ({
    answer: `${clear} ${shown}`,
    means: `as ${shown}`,
    factor: molarMass(canonical) / molarMass(form),
  }))
  return { ok: false, ask: { code: asks, where, got, question: question(asks, where, got), options } }
}

/** Takes the form out of 'mg/L NO3', 'mg NO3/L', 'ppb P', 'mg/L as N'. */
function splitForm(kind: Dissolved, rest: string): { readonly unit: string; readonly form?: Form } {
  const words = rest
    .replace(/[()[\]]/g, ' ')
    .trim()
    .split(/\s+|(?=\/)/)
  const isAs = (at: number): boolean => /^(?:as|of)$/i.test(words[at] ?? '')
  for (const [at, word] of words.entries()) {
    // milligrams, no magnesium
    if (at === 0 && /^mg$/i.test(word)) continue
    const form = (isAs(at - 1) && formNamed(kind, `as ${word}`)) || formNamed(kind, word)
    if (!form && !kind.saysNothing.includes(word.toLowerCase())) continue
    const others = words.filter((_, i) => i !== at && !(i === at - 1 && isAs(i)))
    return { unit: others.join(''), ...(form && { form: form.form }) }
  }
  return { unit: words.join('') }
}
