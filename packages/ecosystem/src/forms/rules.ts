import type * as Forms from './forms.ts'

/**
 * What a form takes and gives, in units: a unit, or a letter for any unit, the same wherever the letter
 * stands in one rule. `a / b` is the quotient of two such units.
 */
export interface FormRule {
  readonly takes: readonly string[]
  readonly gives: string
  /** The form as people write it; names stand in the order of `takes`. */
  readonly written: string
  /** Key of the list of sources; 'arithmetic' where nobody needs to be named. */
  readonly source: string
}

/** One rule for each form; the type refuses a form without one and a rule without its form. */
export const formRules: Readonly<Record<keyof typeof Forms, FormRule>> = {
  monod: {
    takes: ['a', 'a'],
    gives: '1',
    written: 'concentration / (concentration + half)',
    source: 'monod-1949',
  },
  q10: {
    takes: ['1', '°C'],
    gives: '1',
    written: 'perTenDegrees ^ ((temperature - 25) / 10)',
    source: 'arithmetic',
  },
  warmth: {
    takes: ['1', '°C', '°C'],
    gives: '1',
    written: 'perTenDegrees ^ (min(temperature - best, 0) / 10)',
    source: 'arithmetic',
  },
  droop: {
    takes: ['a', 'a', 'a'],
    gives: '1',
    written: '(1 - least / quota) / (1 - least / fed)',
    source: 'droop-1968',
  },
  // The line to zero begins at a concentration written into the form, so any other unit would move it.
  freundlich: {
    takes: ['µmol L⁻¹', 'µmol L⁻¹', '1'],
    gives: '1',
    written: '(concentration / reference) ^ exponent',
    source: 'freundlich-1906',
  },
  lightSaturation: {
    takes: ['a', 'a'],
    gives: '1',
    written: 'tanh(light / saturation)',
    source: 'jassby-platt-1976',
  },
  selfShaded: {
    takes: ['a', '1'],
    gives: 'a',
    written: 'light * (1 - exp(-depth)) / depth',
    source: 'arithmetic',
  },
  throughCanopy: { takes: ['1'], gives: '1', written: 'exp(-depth)', source: 'arithmetic' },
  filmCover: {
    takes: ['a', 'a'],
    gives: '1',
    written: '1 - exp(-3 * mass / hiding)',
    source: 'arithmetic',
  },
  inhibited: {
    takes: ['a', 'a'],
    gives: '1',
    written: 'halfEffect / (halfEffect + concentration)',
    source: 'arithmetic',
  },
  fallingLine: {
    takes: ['a', 'a', 'a', '1'],
    gives: '1',
    written: '1 up to full, in a line down to least at limit',
    source: 'arithmetic',
  },
  positive: { takes: ['a'], gives: 'a', written: 'max(value, 0)', source: 'arithmetic' },
  part: { takes: ['a', 'b'], gives: 'a / b', written: 'value / whole', source: 'arithmetic' },
  least: { takes: ['a', 'a'], gives: 'a', written: 'min(a, b)', source: 'arithmetic' },
  most: { takes: ['a', 'a'], gives: 'a', written: 'max(a, b)', source: 'arithmetic' },
}
