import { equalDimensions } from './dimension.ts'
import type { IssueCode } from './issue.ts'
import type { Measure } from './measure.ts'
import { parseUnit, readUnit } from './parse-unit.ts'
import type { ReadingOptions } from './reading.ts'
import type { Unit } from './unit.ts'

const HOURS_OF_A_DAY = 24
const LUX = /^(?:[km]?lux|[km]?lx|lumens?(?:\s?\/\s?m(?:2|²))?|foot-?candles?|fc)$/i
const USUAL = /^(?:par|ppfd|[uµ]E(?:instein)?s?(?:\s?\/\s?\(?m(?:2|²)(?:\s?\/\s?|\s)s\)?)?)$/i
const OVER_A_DAY = /(?:\/|\bper)\s*\(?(?:m(?:2|²)\s*[·*]?\s*)?d(?:ays?)?\b|\bd(?:ay)?\s?(?:\^?-1|⁻¹)/i

/** Photons (400 to 700 nm) that fall on a square metre: at an instant, or gathered over a day. */
export const light: Measure = {
  where: 'Light',
  next: 'give-light',
  canonical: 'µmol photons/m²/s',
  accepted: ['µmol/m²/s', 'mol/m²/d'],
  lowest: '0',
  unitNamed: (written, { hoursPerDay }) => photons(written, 'at an instant', hoursPerDay),
}
export const dailyLight: Measure = {
  where: 'Light over a day',
  next: 'give-daily-light',
  canonical: 'mol photons/m²/d',
  accepted: ['mol/m²/d', 'µmol/m²/s'],
  lowest: '0',
  unitNamed: (written, { hoursPerDay }) => photons(written, 'over a day', hoursPerDay),
}

/**
 * The unit as photons. Lux weighs light by the human eye; between an instant and a day stand the hours in
 * which the lamp is on, and a unit of the other kind is taken as a mean over them.
 */
function photons(
  written: string,
  kind: 'at an instant' | 'over a day',
  hoursPerDay: ReadingOptions['hoursPerDay'],
): Unit | IssueCode {
  if (LUX.test(written)) return 'needs-spectrum'
  const unit = photonUnit(written)
  if (typeof unit === 'string') return unit
  const typed = OVER_A_DAY.test(written) ? 'over a day' : 'at an instant'
  if (typed === kind) return unit
  if (hoursPerDay === undefined || !(hoursPerDay > 0 && hoursPerDay <= HOURS_OF_A_DAY)) return 'needs-hours'
  const lit = hoursPerDay / HOURS_OF_A_DAY
  return { ...unit, factor: kind === 'over a day' ? unit.factor * lit : unit.factor / lit }
}

/** 'µmol/m²/s' and what keepers write for it; moles of a named substance are none. */
function photonUnit(written: string): Unit | IssueCode {
  const named = parseUnit('µmol photons/m²/s')
  if (USUAL.test(written)) return named
  const answer = readUnit(written)
  if (!answer.ok) return 'unknown-unit'
  const { dimension, remarks } = answer.value
  if (equalDimensions(dimension, named.dimension)) return answer.value
  const ofNothing = equalDimensions(dimension, { amount: 1, length: -2, time: -1 }) && remarks.length === 0
  return ofNothing ? { ...answer.value, dimension: named.dimension } : 'wrong-dimension'
}
