import { OutOfRange } from '../out-of-range.ts'
import { its90 } from '../salinity/temperature-scale.ts'
import { codesOfOneKind, type UnitCode } from './convert-units.ts'
import { canBeLeftOut, type Given, type InputName, inputNamed, isInputName } from './water-inputs.ts'
import { waterQuantities, waterQuantityNamed } from './water-quantities.ts'
import type { Form, WaterQuantity } from './water-quantity.ts'

/** What is wrong with a question, as data. */
export interface WaterIssue {
  readonly code:
    | 'unknown-quantity'
    | 'unknown-input'
    | 'missing-input'
    | 'not-a-number'
    | 'unknown-word'
    | 'no-conversion'
    | 'out-of-range'
  /** The quantity or the input. */
  readonly where: string
  readonly got: unknown
  readonly accepted: string
  readonly next: string
}

export type WaterAnswer =
  | { readonly ok: true; readonly value: number; readonly unit: string }
  | { readonly ok: false; readonly issues: readonly WaterIssue[] }

/**
 * A quantity of the list by its id, from inputs by name. Temperature may be given as `t68` (IPTS-68) where a
 * published value stands on that scale.
 *
 * @returns the value and its unit, or all that is wrong with the question; it does not throw
 * @example askWater('density_eos80', { S: 35, t: 25 }) // { ok: true, value: 1023.34…, unit: 'kg/m3' }
 */
export function askWater(id: string, inputs: Readonly<Record<string, unknown>>): WaterAnswer {
  const quantity = waterQuantityNamed(id)
  if (quantity === undefined) return refused(unknownQuantity(id))
  const given = onScaleOf1990(inputs)
  const form = bestForm(quantity, Object.keys(given))
  const issues = [...namesWrong(quantity, form, given), ...valuesWrong(form, given)]
  return issues.length > 0 ? refused(...issues) : answered(quantity, form, complete(form, given))
}

function refused(...issues: readonly WaterIssue[]): WaterAnswer {
  return { ok: false, issues }
}

function answered(quantity: WaterQuantity, form: Form, given: Given): WaterAnswer {
  const { from, to } = given
  if (form.inputs.includes('from') && !codesOfOneKind(from).includes(to))
    return refused(noConversion(from, to))
  try {
    const value = form.value(given)
    if (typeof value === 'object') return refused(...value.needs.map((name) => missing(quantity, name)))
    const unit = typeof quantity.unit === 'string' ? quantity.unit : quantity.unit(given)
    if (Number.isFinite(value)) return { ok: true, value, unit }
    return refused(noValue(quantity, value))
  } catch (error) {
    if (error instanceof OutOfRange) return refused(error.issue)
    throw error
  }
}

/** `t` for a `t68`, unless both are given: then both stay, and the second is refused as unknown. */
function onScaleOf1990(inputs: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { t68, ...rest } = inputs
  if (typeof t68 !== 'number' || 't' in rest) return inputs
  return { ...rest, t: its90(t68) }
}

/** The form that takes just what is given, or else the one that comes nearest. */
function bestForm(quantity: WaterQuantity, names: readonly string[]): Form {
  const distance = ({ inputs }: Form) =>
    inputs.filter((name) => !names.includes(name) && !canBeLeftOut(name)).length +
    names.filter((name) => !inputs.some((input) => input === name)).length
  return quantity.forms.reduce((best, form) => (distance(form) < distance(best) ? form : best))
}

function namesWrong(
  quantity: WaterQuantity,
  form: Form,
  given: Readonly<Record<string, unknown>>,
): readonly WaterIssue[] {
  const unknown = Object.keys(given).filter((name) => !form.inputs.some((input) => input === name))
  const absent = form.inputs.filter((name) => !(name in given) && !canBeLeftOut(name))
  return [
    ...unknown.map(
      (name): WaterIssue => ({
        code: 'unknown-input',
        where: name,
        got: given[name],
        accepted: formsInWords(quantity),
        next: `Leave it out: ${quantity.id} does not take it${isInputName(name) ? ' with the others' : ''}.`,
      }),
    ),
    ...absent.map((name) => missing(quantity, name)),
  ]
}

function valuesWrong(form: Form, given: Readonly<Record<string, unknown>>): readonly WaterIssue[] {
  return form.inputs.flatMap((name): readonly WaterIssue[] => {
    if (!(name in given)) return []
    const input = inputNamed(name)
    const got = given[name]
    if ('choices' in input) {
      if (typeof got === 'string' && input.choices.includes(got)) return []
      const accepted = input.choices.join(', ')
      return [{ code: 'unknown-word', where: name, got, accepted, next: 'Choose one of these.' }]
    }
    if (typeof got === 'number' && Number.isFinite(got)) return []
    return [{ code: 'not-a-number', where: name, got, accepted: 'a number', next: `Give ${input.says}.` }]
  })
}

/** What was given, with usual values where nothing was. */
function complete(form: Form, given: Readonly<Record<string, unknown>>): Given {
  const usual = form.inputs.flatMap((name) => {
    const input = inputNamed(name)
    return 'usual' in input && input.usual !== undefined ? [[name, input.usual] as const] : []
  })
  // Checked name by name above; formulas see only the names of their form.
  return { ...Object.fromEntries(usual), ...given } as unknown as Given
}

function formsInWords(quantity: WaterQuantity): string {
  const words = quantity.forms.map(({ inputs }) =>
    inputs.map((name) => (canBeLeftOut(name) ? `[${name}]` : name)).join(' '),
  )
  return words.join(' | ')
}

function missing(quantity: WaterQuantity, name: InputName): WaterIssue {
  const { says } = inputNamed(name)
  return {
    code: 'missing-input',
    where: name,
    got: undefined,
    accepted: formsInWords(quantity),
    next: `Give ${name}: ${says}.`,
  }
}

function noValue(quantity: WaterQuantity, got: number): WaterIssue {
  return {
    code: 'out-of-range',
    where: quantity.id,
    got,
    accepted: 'inputs that give a number',
    next: 'Check the inputs: they leave nothing to reckon with, such as two volumes of 0.',
  }
}

function noConversion(from: UnitCode, to: UnitCode): WaterIssue {
  return {
    code: 'no-conversion',
    where: 'to',
    got: to,
    accepted: codesOfOneKind(from).join(', '),
    next: `Choose a unit of the kind of ${from}.`,
  }
}

function unknownQuantity(id: string): WaterIssue {
  return {
    code: 'unknown-quantity',
    where: 'quantity',
    got: id,
    accepted: waterQuantities.map((quantity) => quantity.id).join(', '),
    next: 'Choose one of these.',
  }
}
