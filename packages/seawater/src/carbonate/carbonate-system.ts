import { exp } from '@holdfast/elementary'
import { whereRises } from '../bisection.ts'
import { demand, OutOfRange } from '../out-of-range.ts'
import { type PH, pH } from '../ph/ph.ts'
import {
  type AcidBaseConstants,
  acidBaseConstants,
  type CarbonateWater,
  otherAlkalinity,
} from './constants.ts'

/** The four that can be measured: µmol/kg, total scale, µatm. */
export interface CarbonateMeasures {
  readonly totalAlkalinity: number
  readonly dissolvedInorganicCarbon: number
  readonly pH: PH<'total'>
  readonly pCO2: number
}

/** Any two of the four. */
export type CarbonatePair =
  | Pick<CarbonateMeasures, 'totalAlkalinity' | 'dissolvedInorganicCarbon'>
  | Pick<CarbonateMeasures, 'totalAlkalinity' | 'pH'>
  | Pick<CarbonateMeasures, 'totalAlkalinity' | 'pCO2'>
  | Pick<CarbonateMeasures, 'dissolvedInorganicCarbon' | 'pH'>
  | Pick<CarbonateMeasures, 'dissolvedInorganicCarbon' | 'pCO2'>
  | Pick<CarbonateMeasures, 'pH' | 'pCO2'>

/** All of the system: µmol per kg of solution, and µatm for pCO2 and fCO2. */
export interface CarbonateSystem extends CarbonateMeasures {
  readonly fCO2: number
  /** Dissolved CO2 and H2CO3 together. */
  readonly carbonDioxide: number
  readonly bicarbonate: number
  readonly carbonate: number
}

/**
 * The carbonate system of sea water at the surface, from any two of total alkalinity, dissolved inorganic
 * carbon, pH and pCO2. Alkalinity from a kit is total alkalinity too: it holds borate.
 *
 * @param pair  two of the four; alkalinity, carbon and pCO2 above 0, pH 3 to 11
 * @param water practical salinity 19 to 43, °C (ITS-90) 2 to 35, boron where measured
 * @returns the rest; K1 and K2 are true to 2 and 4 %, which outweighs any error of the arithmetic
 * @throws OutOfRange outside these, or where no pH from 3 to 11 goes with the two; nothing is clipped
 * @source Dickson, Sabine & Christian 2007, Guide to best practices for ocean CO2 measurements, chapters 2 and 5;
 *   each constant in the file named after it. Phosphate and silicate are left out
 * @check rows SW097 to SW115 of validation/seawater/seawater-checks.csv (PyCO2SYS 1.8.3.4)
 * @example carbonateSystem({ totalAlkalinity: 2300, dissolvedInorganicCarbon: 2000 }, { salinity: 35, temperature: 25 })
 */
export function carbonateSystem(pair: CarbonatePair, water: CarbonateWater): CarbonateSystem {
  const k = acidBaseConstants(water)
  const known = checked(pair)
  const h = protons(pHOf(known, k))
  const carbon = carbonOf(known, h, k)
  const { carbonDioxide, bicarbonate, carbonate } = shares(h, k)
  const fCO2 = (carbon * carbonDioxide) / k.K0
  return {
    totalAlkalinity: 1e6 * (carbon * (bicarbonate + 2 * carbonate) + otherAlkalinity(h, k)),
    dissolvedInorganicCarbon: 1e6 * carbon,
    pH: pH('total', pHOf(known, k)),
    pCO2: (1e6 * fCO2) / k.fugacityShare,
    fCO2: 1e6 * fCO2,
    carbonDioxide: 1e6 * carbon * carbonDioxide,
    bicarbonate: 1e6 * carbon * bicarbonate,
    carbonate: 1e6 * carbon * carbonate,
  }
}

/** What is known in mol/kg and atm; two of the four are there. */
interface Known {
  readonly alkalinity?: number | undefined
  readonly carbon?: number | undefined
  readonly pH?: number | undefined
  readonly pCO2?: number | undefined
}

function checked(pair: Partial<CarbonateMeasures>): Known {
  const above0 = (where: string, value: number | undefined, unit: string) => {
    if (value === undefined) return undefined
    demand(where, value, { low: 0, high: 1e6, aboveLow: true, next: `Give ${unit}.` })
    return value / 1e6
  }
  if (pair.pH !== undefined)
    demand('pH', pair.pH.value, { low: 3, high: 11, next: 'Give pH of sea water, such as 8.1.' })
  return {
    alkalinity: above0('total alkalinity', pair.totalAlkalinity, 'µmol/kg, such as 2300'),
    carbon: above0('dissolved inorganic carbon', pair.dissolvedInorganicCarbon, 'µmol/kg, such as 2000'),
    pCO2: above0('pCO2', pair.pCO2, 'µatm, such as 420'),
    pH: pair.pH?.value,
  }
}

/** All three unknown sums rise with pH, so halving never fails. */
function pHOf({ alkalinity, carbon, pH, pCO2 }: Known, k: AcidBaseConstants): number {
  if (pH !== undefined) return pH
  const sought = { low: 3, high: 11, next: 'No sea water has both. Check the two values and their units.' }
  const dissolved = dissolvedGas(pCO2, k)
  if (alkalinity === undefined) {
    const carbonAt = (at: number) => dissolved / shares(protons(at), k).carbonDioxide
    return whereRises(carbonAt, carbon ?? Number.NaN, { ...sought, where: 'carbon, mol/kg' })
  }
  const alkalinityAt = (at: number) => {
    const h = protons(at)
    const share = shares(h, k)
    const all = carbon ?? dissolved / share.carbonDioxide
    return all * (share.bicarbonate + 2 * share.carbonate) + otherAlkalinity(h, k)
  }
  return whereRises(alkalinityAt, alkalinity, { ...sought, where: 'alkalinity, mol/kg' })
}

function carbonOf({ alkalinity, carbon, pCO2 }: Known, h: number, k: AcidBaseConstants): number {
  if (carbon !== undefined) return carbon
  const { carbonDioxide, bicarbonate, carbonate } = shares(h, k)
  if (pCO2 !== undefined) return dissolvedGas(pCO2, k) / carbonDioxide
  const other = otherAlkalinity(h, k)
  const left = (alkalinity ?? Number.NaN) - other
  if (left > 0) return left / (bicarbonate + 2 * carbonate)
  throw new OutOfRange({
    code: 'out-of-range',
    where: 'total alkalinity',
    got: (alkalinity ?? Number.NaN) * 1e6,
    accepted: `above ${other * 1e6} µmol/kg, which borate and hydroxide have at that pH`,
    next: 'Check alkalinity, pH and the scale of the pH.',
  })
}

function dissolvedGas(pCO2: number | undefined, k: AcidBaseConstants): number {
  return (pCO2 ?? Number.NaN) * k.fugacityShare * k.K0
}

function protons(pH: number): number {
  return exp(-pH * Math.LN10)
}

/** Parts of the inorganic carbon, together 1. */
function shares(h: number, { K1, K2 }: AcidBaseConstants) {
  const all = h * h + K1 * h + K1 * K2
  return { carbonDioxide: (h * h) / all, bicarbonate: (K1 * h) / all, carbonate: (K1 * K2) / all }
}
