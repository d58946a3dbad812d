import { convert, isQuantityName, type Option, readQuantity, readUnit } from '@holdfast/quantities'
import { plain } from '../../figure/numbers.ts'
import { type Amount, amount, unitOf } from '../../ways/amounts.ts'
import type { Path } from './path.ts'

/** What a blank of the letter holds: how its text is read, and what is usual. */
export interface Holds {
  /** Unit in which `usual` stands, and that a bare figure is given where the keeper's own is none. */
  readonly unit: string
  /** An amount that this keeper may read in another unit. */
  readonly amount?: Amount
  /** Where most systems lie: drawn while one types, and no bound. */
  readonly usual: readonly [low: number, high: number]
}

export interface BlankAt {
  readonly path: Path
  /** What it is called where it stands alone. */
  readonly label: string
  /** `count` and `cover` (a share of a surface) are numbers in the document, all else is text. */
  readonly holds: Holds | 'words' | 'count' | 'cover' | readonly Choice[]
  /** What else is put beside it when it is filled in. */
  readonly also?: (text: string) => Readonly<Record<string, unknown>>
}

export interface Choice {
  readonly value: string
  readonly words: string
}

export type Piece = string | BlankAt

/** What a text in a blank comes to. */
export interface Understood {
  /** In the unit of `usual`, where it is one number. */
  readonly value?: number
  /** Said where the unit typed is not the one in which this keeper reads it. */
  readonly means?: string
  readonly asks?: { readonly question: string; readonly options: readonly Option[] }
}

/** The quantities by the units in which letters hold them. */
const quantityOf: Readonly<Record<string, string>> = {
  L: 'volume',
  cm: 'length',
  'm²': 'area',
  kg: 'mass',
  '°C': 'temperature',
  'L/h': 'flow',
  d: 'duration',
  psu: 'salinity',
  'mg/L NO3': 'nitrate',
  'mg/L PO4': 'phosphate',
}

/** A bare figure with the unit that this keeper means; what has a unit stays as it is. */
export function withUnit(text: string, holds: BlankAt['holds']): string {
  const typed = text.trim()
  if (typeof holds === 'string' || 'length' in holds || !/^[\d.,]+$/.test(typed)) return typed
  return `${typed} ${holds.amount ? unitOf(holds.amount) : holds.unit}`
}

/** What a text comes to; the whole letter is read by `readSystemFile`, this is for the eye while one types. */
export function understood(text: string, holds: Holds): Understood {
  const whole = withUnit(text, holds)
  const quantity = quantityOf[holds.unit]
  if (quantity !== undefined && isQuantityName(quantity)) {
    const answer = readQuantity(quantity, whole)
    if (!answer.ok) return answer.ask ? { asks: answer.ask } : {}
    const { stated, canonical } = answer.value
    if (stated.is !== 'exact' && stated.is !== 'about') return {}
    const value =
      quantity === 'salinity'
        ? stated.value
        : convert(stated.value, plainUnit(canonical), plainUnit(holds.unit))
    return { value, ...meansOf(value, whole, holds) }
  }
  return rated(whole, holds)
}

/** Rates and shares, which have no quantity of their own: a figure and a unit that measures the same. */
function rated(whole: string, holds: Holds): Understood {
  const [, figure, written = ''] = /^([\d.,]+)\s*(.+)$/.exec(whole) ?? []
  const value = Number((figure ?? '').replace(',', '.'))
  const unit = readUnit(written)
  if (!unit.ok || !Number.isFinite(value)) return {}
  try {
    const inUsual = convert(value, written, holds.unit)
    return { value: inUsual, ...meansOf(inUsual, whole, holds) }
  } catch {
    // The unit measures something else: the letter as a whole says so.
    return {}
  }
}

/** Of a form such as NO3 the unit alone. */
const plainUnit = (unit: string): string => unit.replace(/ (?:NO3|PO4)$/, '')

function meansOf(value: number, whole: string, { unit, amount: of }: Holds): Pick<Understood, 'means'> {
  if (of) return whole.endsWith(` ${unitOf(of)}`) ? {} : { means: amount(of, value) }
  return whole.endsWith(unit) ? {} : { means: `${plain(value)} ${unit}` }
}
