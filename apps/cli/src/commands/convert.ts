import {
  type Asked,
  isQuantityName,
  type QuantityName,
  quantities,
  quantityNames,
  type Reading,
  type ReadingIn,
  type ReadingOptions,
  type Refused,
  readingIn,
  readingInCommonUnits,
  readQuantity,
  statedInWords,
} from '@holdfast/quantities'
import { notRead } from '../not-read.ts'
import { refuse } from '../refuse.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface ConvertOptions {
  readonly as: string
  readonly to?: string
  readonly form?: string
  readonly step?: number
  readonly density?: number
  readonly hours?: number
  readonly json?: true
}

/**
 * Says a figure in all its usual units, or in the one that was asked for.
 *
 * @returns 2 where it must be asked what is meant, 1 where it cannot be read, else 0
 */
export function convertCommand(text: string, options: ConvertOptions, terminal: Terminal): 0 | 1 | 2 {
  const name = quantityNamed(options.as)
  const setting = settingOf(name, options)
  const reading = readQuantity(name, text, setting)
  if (!reading.ok) return notRead(reading, options, terminal)
  const shown = inUnits(name, reading.value, options.to, setting)
  if ('ok' in shown) return notRead(shown, options, terminal)
  terminal.out(options.json ? asJson(name, reading.value, shown) : inWords(name, reading.value, shown))
  return 0
}

function quantityNamed(name: string): QuantityName {
  if (isQuantityName(name)) return name
  const accepted = `There are: ${quantityNames.join(', ')}.`
  throw refuse('no-quantity', 'Quantity', `"${name}" is none that we know`, accepted, 'Name one with --as.')
}

function settingOf(name: QuantityName, { form, step, density, hours }: ConvertOptions): ReadingOptions {
  const { title, forms } = quantities[name]
  if (form !== undefined && forms.length === 0)
    throw refuse('no-form', title, `has no forms, and "${form}" is given`, 'Leave --form out.', '')
  return {
    where: title,
    ...(form !== undefined && { form }),
    ...(step !== undefined && { step }),
    ...(density !== undefined && { density }),
    ...(hours !== undefined && { hoursPerDay: hours }),
  }
}

function inUnits(
  name: QuantityName,
  reading: Reading,
  to: string | undefined,
  setting: ReadingOptions,
): readonly ReadingIn[] | Refused | Asked {
  if (to !== undefined) {
    const one = readingIn(name, reading, to, setting)
    return one.ok ? [one.value] : one
  }
  const usual = readingInCommonUnits(name, reading, setting)
  const { canonical: unit, stated } = reading
  return usual.length > 0 ? usual : [{ unit, stated }]
}

function inWords(name: QuantityName, { text, step }: Reading, shown: readonly ReadingIn[]): string {
  const stepped = step === undefined ? [] : [{ heading: 'Step', stands: 'right' as const }]
  const columns = [{ heading: 'Value', stands: 'right' as const }, { heading: 'Unit' }, ...stepped]
  const rows = shown.map((one) => [
    statedInWords(one.stated),
    one.unit,
    one.step === undefined ? '' : String(Number(one.step.toPrecision(4))),
  ])
  return `${quantities[name].title}: ${text.trim()}\n\n${table(columns, rows)}`
}

function asJson(name: QuantityName, reading: Reading, shown: readonly ReadingIn[]): string {
  const { text, unit, form = null, canonical } = reading
  const typed = { quantity: name, text, unit, form, canonical_unit: canonical }
  const values = shown.map(({ unit: in_unit, stated, step }) => ({
    unit: in_unit,
    ...stated,
    step: step ?? null,
  }))
  return JSON.stringify({ ...typed, values }, null, 2)
}
