import { ways } from './ways.ts'

/** A text of ours with the decimal mark of this keeper: 0.05 mg/L reads 0,05 mg/L. */
export const withMark = (text: string): string =>
  ways().decimal === 'comma' ? text.replace(/(\d)\.(?=\d)/g, '$1,') : text
