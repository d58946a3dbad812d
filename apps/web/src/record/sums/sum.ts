import { askWater, type InputName, OutOfRange, type WaterAnswer } from '@holdfast/seawater'

/** What is typed into a blank, for the units that it may be typed in. */
export type Kind =
  /** Kept in meq/L. */
  'alkalinity' | 'number' | 'temperature' | 'volume' | 'salinity' | 'gravity'

/** A blank of a sum: which input it fills, what it is called, and a sensible start. */
export interface Blank {
  readonly input: string
  readonly label: string
  readonly kind: Kind
  /** Of a bare number; empty where there is none. */
  readonly unit: string
  readonly start: number
  /** Lowest and highest that the form holds for, in the unit. */
  readonly holds?: readonly [number, number]
  /** From the unit of the blank to that of the sum, where they differ. */
  readonly factor?: number
}

/** What stands in the blanks, in the units of the sum. */
export type Given = Readonly<Record<string, number>>

/** A sum of sea water as a keeper asks it. */
export interface Sum {
  readonly id: string
  readonly asks: string
  /** What it is, in a sentence, for one who has not met it. */
  readonly says: string
  readonly blanks: readonly Blank[]
  readonly reckon: (given: Given) => WaterAnswer
  /** A factor and a unit that people read more easily than those of the list. */
  readonly shown: { readonly factor: number; readonly unit: string }
  /** Author and year of the form. */
  readonly source: string
  /** Stands before the result: what may go wrong with water, animals or hands. */
  readonly caution?: string
}

/** A quantity of the list of sea water, its inputs being the blanks of that name. */
export function listed(id: string, fixed: Readonly<Partial<Record<InputName, string>>> = {}): Sum['reckon'] {
  return (given) => askWater(id, { ...given, ...fixed })
}

/** A sum that is none of the list; what it cannot take is an answer too. */
export function within(unit: string, sum: () => number): WaterAnswer {
  try {
    return { ok: true, value: sum(), unit }
  } catch (error) {
    if (error instanceof OutOfRange) return { ok: false, issues: [error.issue] }
    throw error
  }
}

export const salinity = (input: string, label: string, start = 35): Blank => ({
  input,
  label,
  kind: 'salinity',
  unit: '',
  start,
})

export const litres = (input: string, label: string, start: number): Blank => ({
  input,
  label,
  kind: 'volume',
  unit: 'L',
  start,
})

/** The temperature of the water, between those that the form holds for. */
export const warm = (low: number, high: number): Blank => ({
  input: 't',
  label: 'Temperature of the water',
  kind: 'temperature',
  unit: '°C',
  start: 25,
  holds: [low, high],
})
