import { convert, molarMass } from '@holdfast/quantities'

interface Code {
  /** Only codes of one kind turn into each other. */
  readonly kind:
    | 'nitrate'
    | 'nitrite'
    | 'ammonia'
    | 'phosphate'
    | 'alkalinity'
    | 'calcium'
    | 'volume'
    | 'temperature'
  /** One of it in µmol/L, µmol charge/L or L. */
  readonly one: number
  /** Counted in a kg of solution and not in a litre. */
  readonly perKilogram?: true
}

/** 1 mg/L of something that stands for `charges` µmol/L a molecule. */
function milligrams(molarMassOf: number, charges = 1): number {
  return (1000 * charges) / molarMassOf
}

const codes = {
  NO3_mg_L: { kind: 'nitrate', one: milligrams(molarMass('NO3')) },
  'NO3-N_mg_L': { kind: 'nitrate', one: milligrams(molarMass('N')) },
  NO3_umol_L: { kind: 'nitrate', one: 1 },
  NO2_mg_L: { kind: 'nitrite', one: milligrams(molarMass('NO2')) },
  'NO2-N_mg_L': { kind: 'nitrite', one: milligrams(molarMass('N')) },
  NH4_mg_L: { kind: 'ammonia', one: milligrams(molarMass('NH4')) },
  'TAN-N_mg_L': { kind: 'ammonia', one: milligrams(molarMass('N')) },
  TAN_umol_L: { kind: 'ammonia', one: 1 },
  PO4_mg_L: { kind: 'phosphate', one: milligrams(molarMass('PO4')) },
  'PO4-P_mg_L': { kind: 'phosphate', one: milligrams(molarMass('P')) },
  'PO4-P_ug_L': { kind: 'phosphate', one: milligrams(molarMass('P')) / 1000 },
  PO4_umol_L: { kind: 'phosphate', one: 1 },
  meq_L: { kind: 'alkalinity', one: 1000 },
  alk_umol_L: { kind: 'alkalinity', one: 1 },
  dKH: { kind: 'alkalinity', one: 1000 * convert(1, 'dKH', 'meq/L') },
  CaCO3_mg_L: { kind: 'alkalinity', one: milligrams(molarMass('CaCO3'), 2) },
  alk_umol_kg: { kind: 'alkalinity', one: 1, perKilogram: true },
  Ca_mg_L: { kind: 'calcium', one: milligrams(molarMass('Ca')) },
  Ca_mmol_L: { kind: 'calcium', one: 1000 },
  gal_US: { kind: 'volume', one: convert(1, 'US gal', 'L') },
  L: { kind: 'volume', one: 1 },
  degC: { kind: 'temperature', one: 1 },
  degF: { kind: 'temperature', one: 1 },
} as const satisfies Record<string, Code>

export type UnitCode = keyof typeof codes

export const unitCodes = Object.keys(codes) as readonly UnitCode[]

/** The codes that a value of this one can be turned into. */
export function codesOfOneKind(code: UnitCode): readonly UnitCode[] {
  return unitCodes.filter((other) => codes[other].kind === codes[code].kind)
}

/** Whether the two differ by the density of the water. */
export function needsDensity(from: UnitCode, to: UnitCode): boolean {
  return perKilogram(from) !== perKilogram(to)
}

/**
 * A value in another unit of the same kind.
 *
 * @param from, to   codes of one kind; see codesOfOneKind
 * @param density    kg/L of the water, where needsDensity says so
 * @returns the value in `to`; NaN between kinds
 * @source molar masses of @holdfast/quantities
 * @check convert_units in validation/seawater/seawater-checks.csv
 * @example convertUnits(1, 'NO3-N_mg_L', 'NO3_mg_L') // 4.427
 */
export function convertUnits(value: number, from: UnitCode, to: UnitCode, density = Number.NaN): number {
  const [source, target]: readonly [Code, Code] = [codes[from], codes[to]]
  if (source.kind !== target.kind) return Number.NaN
  if (source.kind === 'temperature') return convert(value, from, to)
  const inTarget = value * (source.one / target.one)
  if (!needsDensity(from, to)) return inTarget
  return perKilogram(from) ? inTarget * density : inTarget / density
}

function perKilogram(code: UnitCode): boolean {
  const known: Code = codes[code]
  return known.perKilogram === true
}
