import { convert } from './convert.ts'
import type { Asked } from './issue.ts'
import { question } from './words.ts'

/** Measures that two countries have under one name: gallons, flows in gallons, fluid ounces. */
const COUNTRY = String.raw`(?:(?<us>u\.?\s?s\.?)|(?<imp>imp(?:\.|erial)?|uk))`
const PER = String.raw`\s*(?:\/|per)\s*(?<per>d(?:ay)?|h(?:(?:ou)?r)?|min(?:ute)?)`
const UNIT = String.raw`(?:(?<short>gph|gpm|gpd)|(?<ounce>fl(?:uid|\.)?\s*(?:oz\.?|ounces?))|gal(?:lon)?s?\.?(?:${PER})?)`
const after = (pattern: string): string => pattern.replaceAll('?<', '?<after_')
const NAMED = new RegExp(`^(?:${COUNTRY}\\s*${UNIT}|${after(UNIT)}\\s*${after(COUNTRY)})$`, 'i')
const BARE = new RegExp(`^${UNIT}$`, 'i')

/** Name without its country, as the table of units has it, and the unit in which two countries compare. */
function nameOf(groups: Readonly<Record<string, string | undefined>>): readonly [string, string] {
  if ((groups.ounce ?? groups.after_ounce) !== undefined) return ['floz', 'L']
  const short = (groups.short ?? groups.after_short)?.toLowerCase()
  const per = short?.slice(-1) ?? (groups.per ?? groups.after_per)?.slice(0, 1).toLowerCase()
  if (per === undefined) return ['gal', 'L']
  if (per === 'h') return ['gph', 'L/h']
  return [per === 'd' ? 'gal/d' : 'gal/min', 'L/h']
}

/**
 * The name that the table of units has for such a measure; other units come back as they are.
 *
 * @example namedByCountry('gallons (US)') // 'US gal'
 * @example namedByCountry('imp. fl. oz.') // 'imp floz'
 */
export function namedByCountry(unit: string): string {
  const found = NAMED.exec(unit.replace(/[()]/g, ' ').replace(/\s+/g, ' ').trim())?.groups
  if (found === undefined) return unit
  const country = (found.us ?? found.after_us) === undefined ? 'imp' : 'US'
  return `${country} ${nameOf(found)[0]}`
}

/** A question where the unit is of no named country: gallons are a fifth apart, ounces 4 %. */
export function whichCountry(where: string, got: string, figure: string, unit: string): Asked | undefined {
  const found = BARE.exec(unit)?.groups
  if (found === undefined) return undefined
  const [name, canonical] = nameOf(found)
  const isOunce = name === 'floz'
  const option = (country: 'US' | 'imp') => {
    const unitName = isOunce ? 'fl oz' : name
    const means = `${country === 'US' ? 'US' : 'imperial'} ${meanings[isOunce ? 'ounce' : 'gallon'][country]}`
    return {
      answer: `${figure} ${country} ${unitName}`,
      means,
      factor: convert(1, `${country} ${name}`, canonical),
    }
  }
  const code = isOunce ? 'which-fluid-ounce' : 'which-gallon'
  const options = [option('US'), option('imp')]
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}

const meanings = {
  gallon: { US: 'gallons of 3.785 L', imp: 'gallons of 4.546 L' },
  ounce: { US: 'fluid ounces of 29.57 mL', imp: 'fluid ounces of 28.41 mL' },
} as const
