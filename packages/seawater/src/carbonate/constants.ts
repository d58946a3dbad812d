import { exp } from '@holdfast/elementary'
import { lnBisulfateKDickson1990 } from './bisulfate-k-dickson-1990.ts'
import { lnBoricAcidKDickson1990 } from './boric-acid-k-dickson-1990.ts'
import {
  carbonDioxideFugacityShareWeiss1974,
  lnCarbonDioxideSolubilityWeiss1974,
} from './carbon-dioxide-solubility-weiss-1974.ts'
import {
  log10CarbonicAcidK1Lueker2000,
  log10CarbonicAcidK2Lueker2000,
} from './carbonic-acid-k-lueker-2000.ts'
import { totalBoron, totalFluoride, totalSulfate } from './conservative-totals.ts'
import { lnFluorideCurvePerezFraga1987 } from './hydrogen-fluoride-k-perez-fraga-1987.ts'
import { lnWaterKMillero1995 } from './water-k-millero-1995.ts'

/** The water whose carbonate system is asked about. */
export interface CarbonateWater {
  /** Practical (PSS-78), 19 to 43. */
  readonly salinity: number
  /** °C (ITS-90), 2 to 35. */
  readonly temperature: number
  /** Boron where it was measured, µmol/kg; by salinity (Uppström 1974) where not. */
  readonly boron?: number
}

/** All that acids and bases need to know of a water, mol per kg of solution, total scale but KS (free). */
export interface AcidBaseConstants {
  readonly K0: number
  readonly K1: number
  readonly K2: number
  readonly KB: number
  readonly KW: number
  readonly KS: number
  readonly KF: number
  readonly boron: number
  readonly sulfate: number
  readonly fluoride: number
  /** Fugacity over partial pressure of CO2. */
  readonly fugacityShare: number
}

/** @throws OutOfRange outside the narrowest of the fits, Lueker et al. 2000 */
export function acidBaseConstants(water: CarbonateWater): AcidBaseConstants {
  const { salinity: s, temperature: t, boron } = water
  return {
    K1: exp(log10CarbonicAcidK1Lueker2000(s, t) * Math.LN10),
    K2: exp(log10CarbonicAcidK2Lueker2000(s, t) * Math.LN10),
    K0: exp(lnCarbonDioxideSolubilityWeiss1974(s, t)),
    KB: exp(lnBoricAcidKDickson1990(s, t)),
    KW: exp(lnWaterKMillero1995(s, t)),
    KS: exp(lnBisulfateKDickson1990(s, t)),
    // Its fit ends at S 40 and at 9 to 33 °C; another constant for HF moves pH by 0.00001, so beyond is fine.
    KF: exp(lnFluorideCurvePerezFraga1987(s, t)),
    boron: boron === undefined ? totalBoron(s) : boron / 1e6,
    sulfate: totalSulfate(s),
    fluoride: totalFluoride(s),
    fugacityShare: carbonDioxideFugacityShareWeiss1974(t),
  }
}

/** Alkalinity that is not carbonate, mol/kg, at h protons (total scale); phosphate and silicate are left out. */
export function otherAlkalinity(h: number, k: AcidBaseConstants): number {
  const free = h / (1 + k.sulfate / k.KS)
  return (
    (k.boron * k.KB) / (k.KB + h) +
    k.KW / h -
    free -
    k.sulfate / (1 + k.KS / free) -
    k.fluoride / (1 + k.KF / free)
  )
}
