import { convert } from './convert.ts'
import type { Asked } from './issue.ts'
import { question } from './words.ts'

const COUNTRY = String.raw`(?:(?<us>u\.?\s?s\.?)|(?<imp>imp(?:\.|erial)?|uk))`
const GALLON = String.raw`(?<unit>gph|gal(?:lon)?s?\.?(?<hourly>\s*(?:\/|per)\s*h(?:ou)?r?)?)`
const NAMED = new RegExp(
  `^(?:${COUNTRY}\\s*${GALLON}|${GALLON.replaceAll('?<', '?<after_')}\\s*${COUNTRY.replaceAll('?<', '?<after_')})$`,
  'i',
)
const BARE = new RegExp(`^${GALLON}$`, 'i')

/** The name that the table of units has for gallons; other units come back as they are. */
export function namedGallons(unit: string): string {
  const found = NAMED.exec(unit)?.groups
  if (found === undefined) return unit
  const written = found.unit ?? found.after_unit ?? ''
  const hourly = /^gph$/i.test(written) || (found.hourly ?? found.after_hourly) !== undefined
  const country = (found.us ?? found.after_us) === undefined ? 'imp' : 'US'
  return `${country} ${hourly ? 'gph' : 'gal'}`
}

/** A question where the unit is gallons of no named country, a fifth apart. */
export function whichGallon(where: string, got: string, unit: string): Asked | undefined {
  const found = BARE.exec(unit)
  if (found === null) return undefined
  const hourly = /^gph$/i.test(unit) || found.groups?.hourly !== undefined
  const [name, canonical] = hourly ? ['gph', 'L/h'] : ['gal', 'L']
  const figure = got.trim().slice(0, -unit.length).trim()
  const option = (country: 'US' | 'imp', means: string) => ({
    answer: `${figure} ${country} ${name}`,
    means,
    factor: convert(1, `${country} ${name}`, canonical),
  })
  const options = [option('US', 'US gallons of 3.785 L'), option('imp', 'imperial gallons of 4.546 L')]
  const code = 'which-gallon'
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}
