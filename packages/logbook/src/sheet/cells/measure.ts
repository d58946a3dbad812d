import type { ReadingOptions } from '@holdfast/quantities'

import type { ReadQuantity } from '../../entries/reading.ts'
import { usualDensity } from './to-canonical.ts'

/** How the values of a series are to be read: what its header and the answers to its questions say. */
export interface Measure {
  readonly quantity: ReadQuantity
  readonly unit?: string
  readonly form?: string
  readonly reference?: string
  readonly salinityScale?: string
  /** Units of which one must be chosen, where the header and a title say different things. */
  readonly unitInDoubt?: readonly string[]
}

/** What quantities is told beside a cell. */
export function optionsOf({ unit, form, reference }: Measure): ReadingOptions {
  return {
    decimal: '.',
    density: usualDensity,
    ...(unit !== undefined && { unit }),
    ...(form !== undefined && { form }),
    ...(reference !== undefined && { reference }),
  }
}
