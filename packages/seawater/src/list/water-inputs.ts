import { ammoniumMethods } from '../ammonia/un-ionised-ammonia.ts'
import { glassExpansionPerKelvin } from '../density/specific-gravity.ts'
import { ions } from '../mixing/ions-millero-2008.ts'
import { sodiumLight_nm } from '../optics/refractive-index-quan-fry-1995.ts'
import { unitCodes } from './convert-units.ts'

interface NumberInput {
  readonly unit: string
  readonly says: string
  /** Taken where it is not given. */
  readonly usual?: number
  /** May be left out, and then comes from salinity. */
  readonly fromSalinity?: true
}

interface WordInput {
  readonly says: string
  readonly choices: readonly string[]
}

/** What can be given to a quantity of the list, by name. */
export const waterInputs = {
  S: { unit: '1', says: 'practical salinity (PSS-78)' },
  S1: { unit: '1', says: 'practical salinity of the first water' },
  S2: { unit: '1', says: 'practical salinity of the second water' },
  S_new: { unit: '1', says: 'practical salinity of the new water' },
  S_target: { unit: '1', says: 'practical salinity wanted' },
  t: { unit: 'degC', says: 'temperature (ITS-90)' },
  t_ref: { unit: 'degC', says: 'temperature of the fresh water that specific gravity refers to' },
  t_cal: { unit: 'degC', says: 'temperature at which the scale of the instrument is true' },
  p: { unit: 'dbar', says: 'pressure above the atmosphere', usual: 0 },
  C: { unit: 'mS/cm', says: 'conductivity at the temperature of the water' },
  R: { unit: '1', says: 'conductivity over 42.914 mS/cm' },
  SG: { unit: '1', says: 'specific gravity' },
  reading: { unit: '1', says: 'reading of the scale' },
  glass_expansion_per_K: {
    unit: '1/K',
    says: 'cubic expansion of the float',
    usual: glassExpansionPerKelvin,
  },
  wavelength_nm: { unit: 'nm', says: 'wavelength of the light', usual: sodiumLight_nm },
  pressure_atm: { unit: 'atm', says: 'pressure of moist air at the surface', usual: 1 },
  pH_total: { unit: '1', says: 'pH on the total scale' },
  pH_free: { unit: '1', says: 'pH on the free scale' },
  pH_nbs: { unit: '1', says: 'pH of a probe set with NBS buffers' },
  TA_umol_kg: { unit: 'umol/kg', says: 'total alkalinity' },
  DIC_umol_kg: { unit: 'umol/kg', says: 'dissolved inorganic carbon' },
  pCO2_uatm: { unit: 'uatm', says: 'partial pressure of CO2' },
  B_umol_kg: { unit: 'umol/kg', says: 'boron as measured', fromSalinity: true },
  Ca_umol_kg: { unit: 'umol/kg', says: 'calcium as measured', fromSalinity: true },
  TAN_umol_L: { unit: 'umol/L', says: 'total ammonia, NH3 and NH4' },
  volume_L: { unit: 'L', says: 'volume of the water' },
  volume1_L: { unit: 'L', says: 'volume of the first water' },
  volume2_L: { unit: 'L', says: 'volume of the second water' },
  evaporated_L: { unit: 'L', says: 'liquid fresh water that went as vapour' },
  salt_fraction: { unit: 'g/g', says: 'sea salt in 1 g of the mix as weighed' },
  value: { unit: '', says: 'number to convert or to dilute' },
  value_new: { unit: '', says: 'the same in the new water' },
  fraction: { unit: '1', says: 'part of the net water that one change replaces' },
  count: { unit: '1', says: 'number of changes' },
  exchanged_volumes: { unit: '1', says: 'new water over net water' },
  from: { says: 'unit of the value', choices: unitCodes },
  to: { says: 'unit wanted', choices: unitCodes },
  method: { says: 'published form', choices: ammoniumMethods },
  pH_scale: {
    says: 'scale of the pH that pK is compared with',
    choices: ['total', 'free', 'seawater', 'NBS'],
  },
  ion: { says: 'ion', choices: ions },
  per: { says: 'mg per kg of solution, or per litre', choices: ['kg', 'L'] },
} as const satisfies Record<string, NumberInput | WordInput>

export type InputName = keyof typeof waterInputs

type ValueOf<Input> = Input extends { readonly choices: readonly (infer Choice)[] }
  ? Choice
  : Input extends { readonly fromSalinity: true }
    ? number | undefined
    : number

/** Inputs as a formula takes them: read, known, complete. */
export type Given<Name extends InputName = InputName> = {
  readonly [N in Name]: ValueOf<(typeof waterInputs)[N]>
}

/** The table again, seen without the names. */
export function inputNamed(name: InputName): NumberInput | WordInput {
  return waterInputs[name]
}

export function isInputName(name: string): name is InputName {
  return Object.hasOwn(waterInputs, name)
}

/** Whether a quantity can do without being given it. */
export function canBeLeftOut(name: InputName): boolean {
  const input = inputNamed(name)
  return 'unit' in input && (input.usual !== undefined || input.fromSalinity === true)
}
