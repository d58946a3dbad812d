import { convert } from './convert.ts'
import type { Asked } from './issue.ts'
import { question } from './words.ts'

const PER_CENTIMETRE: Readonly<Record<string, number>> = { ms: 1, µs: 1e-3, us: 1e-3, s: 1e3 }
const UNIT = /^(?<unit>m|[µu])?(?<siemens>s)\s?(?:\/\s?cm|cm\s?(?:⁻¹|\^?-1))\s*(?<temperature>.*)$/i
const TEMPERATURE = /^(?:\(|at|@|,)?\s*(?<value>\d+(?:[.,]\d+)?)\s*(?:°|º|deg)?\s*(?<scale>[cf])\)?$/i

/** A unit of conductivity, and the temperature behind it where there is one. */
export interface ConductivityUnit {
  /** mS/cm in 1 of it. */
  readonly factor: number
  readonly shown: 'mS/cm' | 'µS/cm'
  /** °C to which the conductivity belongs: that of the water, or that for which the meter works it out. */
  readonly temperature?: number
}

/** 'mS/cm at 25 °C', 'µS/cm @77F'; undefined where the text is none of these. */
export function conductivityUnit(written: string): ConductivityUnit | undefined {
  const found = UNIT.exec(written)?.groups
  const micro = found?.unit?.toLowerCase()
  const factor = PER_CENTIMETRE[`${micro ?? ''}s`]
  if (found === undefined || factor === undefined || micro === undefined) return undefined
  const shown = micro === 'm' ? 'mS/cm' : 'µS/cm'
  if (found.temperature === '') return { factor, shown }
  const temperature = TEMPERATURE.exec(found.temperature ?? '')?.groups
  if (temperature === undefined) return undefined
  const value = Number(temperature.value?.replace(',', '.'))
  const scale = temperature.scale?.toUpperCase() === 'F' ? '°F' : '°C'
  return { factor, shown, temperature: convert(value, scale, '°C') }
}

/** °C as it is shown behind a conductivity. */
export function atTemperature(celsius: number): string {
  return `mS/cm at ${Number(celsius.toFixed(2))} °C`
}

export function whichConductivityTemperature(where: string, got: string, clear: string): Asked {
  const code = 'which-conductivity-temperature'
  const options = [25, 20].map((celsius) => ({
    answer: `${clear} at ${celsius} °C`,
    means: `worked out by the meter for ${celsius} °C, or measured in water of ${celsius} °C`,
  }))
  return { ok: false, ask: { code, where, got, question: question(code, where, got), options } }
}
