import { exp } from '@holdfast/elementary'
import { lnBisulfateKDickson1990 } from '../carbonate/bisulfate-k-dickson-1990.ts'
import { lnBoricAcidKDickson1990 } from '../carbonate/boric-acid-k-dickson-1990.ts'
import {
  log10AragoniteKspMucci1983,
  log10CalciteKspMucci1983,
} from '../carbonate/calcium-carbonate-ksp-mucci-1983.ts'
import { lnCarbonDioxideSolubilityWeiss1974 } from '../carbonate/carbon-dioxide-solubility-weiss-1974.ts'
import {
  log10CarbonicAcidK1Lueker2000,
  log10CarbonicAcidK2Lueker2000,
} from '../carbonate/carbonic-acid-k-lueker-2000.ts'
import { lnFluorideKPerezFraga1987 } from '../carbonate/hydrogen-fluoride-k-perez-fraga-1987.ts'
import { lnWaterKMillero1995 } from '../carbonate/water-k-millero-1995.ts'
import { form, type WaterQuantity } from './water-quantity.ts'

/** A constant of salinity and temperature alone. */
function constant(id: string, says: string, of: (S: number, t: number) => number): WaterQuantity {
  return { id, says, unit: '1', forms: [form(['S', 't'], ({ S, t }) => of(S, t))], restsOn: [of] }
}

/** The published constants of the carbonate system. */
export const constantQuantities: readonly WaterQuantity[] = [
  {
    id: 'K0',
    says: 'solubility of CO2',
    unit: 'mol/(kg atm)',
    forms: [form(['S', 't'], ({ S, t }) => exp(lnCarbonDioxideSolubilityWeiss1974(S, t)))],
    restsOn: [lnCarbonDioxideSolubilityWeiss1974],
  },
  constant('ln_K0', 'ln of the solubility of CO2', lnCarbonDioxideSolubilityWeiss1974),
  constant('log10_K1', 'log10 of K1 of carbonic acid', log10CarbonicAcidK1Lueker2000),
  constant('log10_K2', 'log10 of K2 of carbonic acid', log10CarbonicAcidK2Lueker2000),
  constant('ln_KB', 'ln of K of boric acid', lnBoricAcidKDickson1990),
  constant('ln_KW', 'ln of the ion product of water', lnWaterKMillero1995),
  constant('ln_KS', 'ln of K of bisulfate, free scale', lnBisulfateKDickson1990),
  constant('ln_KF', 'ln of K of hydrogen fluoride', lnFluorideKPerezFraga1987),
  constant('log10_Ksp_aragonite', 'log10 of the solubility product of aragonite', log10AragoniteKspMucci1983),
  constant('log10_Ksp_calcite', 'log10 of the solubility product of calcite', log10CalciteKspMucci1983),
]
