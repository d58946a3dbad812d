import { type FigureSigns, writtenAlone, written as writtenIn } from '@holdfast/quantities'
import { thousands } from '../ways/counts.ts'
import { ways } from '../ways/ways.ts'

const signs = (): FigureSigns => ({
  decimal: ways().decimal === 'comma' ? ',' : '.',
  minus: '\u2212',
  thousands,
})

/** A value with the ends of its 90 % interval, as this keeper reads it. */
export const written = (value: number, low: number, high: number, least = 0) =>
  writtenIn({ value, low, high, least }, signs())

/** One number alone, to three digits: what was said or read, not computed. */
export const plain = (value: number): string => writtenAlone(value, signs())
