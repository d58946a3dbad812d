import { isQuantityName, quantities, type Stated } from '@holdfast/quantities'

import type { Blank, Choice } from './blank.ts'
import type { Filled, NotUnderstood } from './fill-in.ts'
import { asTyped, kind, typedTexts } from './kind.ts'
import { salinityRead } from './salinity-read.ts'
import { z } from './schema.ts'

/**
 * Quantities a keeper reads, and the unit in which `value` stands: nitrate mg/L as NO3, phosphate
 * mg/L as PO4, ammonia mg/L of total ammonia as N, nitrite mg/L as NO2, alkalinity meq/L, calcium and
 * magnesium mg/L, salinity practical (PSS-78), temperature °C, pH as read.
 */
export const readQuantities = {
  nitrate: 'mg/L NO3',
  phosphate: 'mg/L PO4',
  ammonia: 'mg/L N',
  nitrite: 'mg/L NO2',
  alkalinity: 'meq/L',
  calcium: 'mg/L',
  magnesium: 'mg/L',
  salinity: 'psu',
  temperature: '°C',
  pH: 'pH',
} as const

export type ReadQuantity = keyof typeof readQuantities

const names = Object.keys(readQuantities) as [ReadQuantity, ...ReadQuantity[]]

/** Of these a kit shows 0 where there is less than its first mark. */
const readByColour: readonly string[] = [
  'nitrate',
  'phosphate',
  'ammonia',
  'nitrite',
] satisfies ReadQuantity[]

const examples: Readonly<Record<ReadQuantity, string>> = {
  nitrate: 'such as 5 mg/L NO3 or <0.5 mg/L NO3',
  phosphate: 'such as 0.05 mg/L PO4, 16 ppb P or <0.03 mg/L PO4',
  ammonia: 'such as 0.2 mg/L NH3-N or <0.05 mg/L NH4',
  nitrite: 'such as 0.1 mg/L NO2 or <0.02 mg/L NO2',
  alkalinity: 'such as 8.4 dKH or 3 meq/L',
  calcium: 'such as 420 mg/L',
  magnesium: 'such as 1310 mg/L',
  salinity: 'such as 35 psu or 1.026 SG 25/25 °C',
  temperature: 'such as 25.5 °C or 78 °F',
  pH: 'such as 8.1',
}

export const reading = kind({
  name: 'reading',
  title: 'Reading of the water',
  v: 1,
  body: {
    quantity: z.enum(names),
    /** Null where nothing was detected and no limit is known. */
    value: z.nullable(z.number()),
    /** True: `value` is the limit below which the kit read nothing. */
    belowDetection: z.boolean(),
    /** True: `value` is the end of the scale, the water holds more. */
    aboveRange: z.exactOptional(z.boolean()),
    approximate: z.exactOptional(z.boolean()),
    /** Low and high of a reading such as "5-10"; `value` is the middle. */
    interval: z.exactOptional(z.tuple([z.number(), z.number()])),
    text: asTyped,
    unit: z.exactOptional(z.string()),
    form: z.exactOptional(z.string()),
    kit: z.exactOptional(z.string()),
    remark: z.exactOptional(z.string()),
    typed: typedTexts,
  },
  blanks: (_, typed) => [
    {
      name: 'quantity',
      label: 'What was read',
      holds: 'choice',
      required: true,
      hint: 'Such as nitrate',
      choices,
    },
    valueBlank(typed.quantity ?? '', typed.unit?.trim() ?? ''),
    ...unitBlanks(typed.quantity ?? ''),
    { name: 'kit', label: 'Kit or probe', holds: 'words', required: false, hint: 'Such as colour kit' },
    { name: 'remark', label: 'Remark', holds: 'words', required: false, hint: 'Anything worth keeping' },
  ],
  understand: (filled) => {
    const quantity = names.find((one) => one === filled.words('quantity'))
    if (quantity === undefined) throw new Error('a choice that was not offered')
    const said = quantity === 'pH' ? pHRead(filled) : figureRead(quantity, filled)
    if ('questions' in said) return said
    return {
      quantity,
      ...said,
      text: filled.typed.value ?? '',
      ...filled.wordsAs('kit', 'kit'),
      ...filled.wordsAs('remark', 'remark'),
      typed: filled.typed,
    }
  },
  fills: ({ quantity, text, unit, form, kit, remark }) => ({
    quantity,
    value: quantity === 'pH' ? text : withUnit(text, unit, form),
    ...(kit !== undefined && { kit }),
    ...(remark !== undefined && { remark }),
  }),
  says: ({ quantity, text, unit, form, kit }) =>
    `${labelOf(quantity)} ${withUnit(text, unit, form)}${kit === undefined ? '' : ` (${kit})`}`,
})

const labelOf = (quantity: ReadQuantity): string =>
  isQuantityName(quantity) ? quantities[quantity].title : quantity
const choices: readonly Choice[] = names.map((value) => ({ value, words: labelOf(value) }))

/** A cell has its unit in the head of its column, a text typed into a blank may have it in itself. */
const withUnit = (text: string, unit = '', form = ''): string =>
  /(?:^|[\s<>~≤≥=-])[\d.,]+\s*$/.test(text)
    ? [text, unit, form].filter((part) => part !== '').join(' ')
    : text

function valueBlank(quantity: string, unit: string): Blank {
  const known = names.find((one) => one === quantity)
  const blank = { name: 'value', label: known ? labelOf(known) : 'Value', required: true, limits: true }
  if (known === undefined)
    return { ...blank, holds: 'words', hint: 'Say first what was read, then the figure with its unit' }
  const hint = `Give ${known === 'pH' ? known : known.toLowerCase()}, ${examples[known]}`
  return known === 'pH'
    ? { ...blank, holds: 'number', hint, from: 0, to: 14 }
    : { ...blank, holds: known, hint, ...(unit !== '' && { unit }) }
}

/** The unit for figures that have none; a meter or kit that is read often always shows the same. */
function unitBlanks(quantity: string): readonly Blank[] {
  if (!isQuantityName(quantity)) return []
  const offered = quantities[quantity].common.map((value) => ({ value, words: value }))
  const hint = 'The unit of a figure that has none'
  return [
    { name: 'unit', label: 'Unit', holds: 'choice', required: false, hint, choices: offered, open: true },
  ]
}

interface FigureRead {
  readonly value: number | null
  readonly belowDetection: boolean
  readonly aboveRange?: boolean
  readonly approximate?: boolean
  readonly interval?: [number, number]
  readonly unit?: string
  readonly form?: string
}

const pHRead = (filled: Filled): FigureRead => ({ value: filled.number('value'), belowDetection: false })

function figureRead(quantity: ReadQuantity, filled: Filled): FigureRead | NotUnderstood {
  const reading = filled.reading('value')
  const { text, unit, form } = reading
  const stated = quantity === 'salinity' ? salinityRead(reading) : reading.stated
  if (stated === undefined) return noSuchWater(text)
  if (stated.is === 'exact' && stated.value === 0 && readByColour.includes(quantity))
    return whatIsNought(labelOf(quantity), text)
  return { ...bodyOf(stated), unit, ...(form !== undefined && { form }) }
}

function bodyOf(stated: Stated): FigureRead {
  switch (stated.is) {
    case 'exact':
      return { value: stated.value, belowDetection: false }
    case 'about':
      return { value: stated.value, belowDetection: false, approximate: true }
    case 'below':
      return { value: stated.limit, belowDetection: true }
    case 'above':
      return { value: stated.limit, belowDetection: false, aboveRange: true }
    case 'between': {
      const { low, high } = stated
      return { value: (low + high) / 2, belowDetection: false, interval: [low, high] }
    }
    case 'not detected':
      return { value: null, belowDetection: true }
  }
}

function noSuchWater(text: string): NotUnderstood {
  const got = `"${text}" is no sea water`
  const accepted = `Salinity, ${examples.salinity}.`
  const issue = {
    code: 'no-such-water',
    where: 'Salinity',
    got,
    accepted,
    next: 'Look at the instrument again.',
  }
  return { issues: [issue], questions: [] }
}

/** A nought of a kit is "less than the first mark", never none; stored as 0 it would bias every fit. */
function whatIsNought(label: string, text: string): NotUnderstood {
  const question = `${label}: is "${text}" below the first mark of the kit? Then write "<" and that mark, such as <0.5 with its unit.`
  const options = [{ value: 'not detected', words: 'nothing seen, and the first mark is not known' }]
  return { issues: [], questions: [{ blank: 'value', question, options }] }
}
