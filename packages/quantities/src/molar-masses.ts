/**
 * Molar masses, g mol⁻¹.
 *
 * @source IUPAC abridged standard atomic weights (2013 and later tables; from memory)
 */
const atoms = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Fe: 55.845,
  La: 138.905,
} as const

type AtomName = keyof typeof atoms
type Composition = Partial<Record<AtomName, number>>

/** Ions, gases and salts by the atoms in them; 'NO3-N' is the nitrogen of nitrate, and so on. */
const compositions = {
  H: { H: 1 },
  C: { C: 1 },
  N: { N: 1 },
  O: { O: 1 },
  Na: { Na: 1 },
  Mg: { Mg: 1 },
  Si: { Si: 1 },
  P: { P: 1 },
  S: { S: 1 },
  Cl: { Cl: 1 },
  K: { K: 1 },
  Ca: { Ca: 1 },
  Fe: { Fe: 1 },
  La: { La: 1 },
  O2: { O: 2 },
  N2: { N: 2 },
  CO2: { C: 1, O: 2 },
  NO3: { N: 1, O: 3 },
  NO2: { N: 1, O: 2 },
  NH3: { N: 1, H: 3 },
  NH4: { N: 1, H: 4 },
  PO4: { P: 1, O: 4 },
  HCO3: { H: 1, C: 1, O: 3 },
  CO3: { C: 1, O: 3 },
  SO4: { S: 1, O: 4 },
  SiO2: { Si: 1, O: 2 },
  SiO3: { Si: 1, O: 3 },
  SiO4: { Si: 1, O: 4 },
  CaO: { Ca: 1, O: 1 },
  CaCO3: { Ca: 1, C: 1, O: 3 },
  NH4Cl: { N: 1, H: 4, Cl: 1 },
  NaNO3: { Na: 1, N: 1, O: 3 },
  KNO3: { K: 1, N: 1, O: 3 },
  KH2PO4: { K: 1, H: 2, P: 1, O: 4 },
  Na2HPO4: { Na: 2, H: 1, P: 1, O: 4 },
  'NO3-N': { N: 1 },
  'NO2-N': { N: 1 },
  'NH3-N': { N: 1 },
  'NH4-N': { N: 1 },
  'TAN-N': { N: 1 },
  'PO4-P': { P: 1 },
} as const satisfies Record<string, Composition>

/** What a mass or an amount may be of; capital and small letters count. */
export type Substance = keyof typeof compositions

export const substances = Object.keys(compositions) as readonly Substance[]

export function isSubstance(word: string): word is Substance {
  return Object.hasOwn(compositions, word)
}

/** Molar mass, g mol⁻¹: the sum over the atoms of the formula. */
export function molarMass(substance: Substance): number {
  const composition: Composition = compositions[substance]
  let mass = 0
  for (const [atom, count] of Object.entries(composition)) mass += atoms[atom as AtomName] * count
  return mass
}
