import { demand } from './out-of-range.ts'

/** Standard atomic weights, abridged, g mol⁻¹. Source: IUPAC 2021 (memory). */
const atomicMass = {
  H: 1.008,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
} as const

type Element = keyof typeof atomicMass

/** Atoms in one formula unit. */
const formulas = {
  'ammonium chloride': { N: 1, H: 4, Cl: 1 },
  'ammonium sulfate': { N: 2, H: 8, S: 1, O: 4 },
  'sodium nitrate': { Na: 1, N: 1, O: 3 },
  'potassium nitrate': { K: 1, N: 1, O: 3 },
  'calcium nitrate': { Ca: 1, N: 2, O: 6 },
  'monopotassium phosphate': { K: 1, H: 2, P: 1, O: 4 },
  'dipotassium phosphate': { K: 2, H: 1, P: 1, O: 4 },
  'monosodium phosphate': { Na: 1, H: 2, P: 1, O: 4 },
  'disodium phosphate': { Na: 2, H: 1, P: 1, O: 4 },
  'trisodium phosphate': { Na: 3, P: 1, O: 4 },
} as const satisfies Record<string, Partial<Record<Element, number>>>

/** A pure compound without water of crystals. */
export type Compound = keyof typeof formulas

export const compounds = Object.keys(formulas) as readonly Compound[]

/** @returns the compound of that name, or undefined if we know none */
export function compoundNamed(name: string): Compound | undefined {
  const plain = name
    .trim()
    .toLowerCase()
    .replace('sulphate', 'sulfate')
    .replace(/\s*\(?anhydrous\)?/, '')
  return compounds.find((compound) => compound === plain)
}

/**
 * Share of a compound's mass that is N or P.
 *
 * @returns 0 to 1; 0 if it holds none of that atom
 * @source the formula and atomic weights
 */
export function massFraction(compound: Compound, atom: 'N' | 'P'): number {
  const formula: Partial<Record<Element, number>> = formulas[compound]
  const masses = Object.entries(formula).map(([element, count]) => atomicMass[element as Element] * count)
  const whole = masses.reduce((sum, mass) => sum + mass, 0)
  return ((formula[atom] ?? 0) * atomicMass[atom]) / whole
}

/**
 * Mass of a compound that raises the concentration of N or P by `rise_mg_L` in the net water.
 *
 * @param rise_mg_L of the atom: mg N or mg P per litre, not of the ion
 * @param volume_L  net water
 * @returns g, of the dry and pure compound
 * @throws OutOfRange for a rise or volume below 0, or a compound without that atom
 * @source mass balance
 */
export function doseMass(compound: Compound, atom: 'N' | 'P', rise_mg_L: number, volume_L: number): number {
  demand('rise', rise_mg_L, { low: 0, high: Infinity, next: 'Give mg/L of the atom, 0 or more.' })
  demand('volume', volume_L, { low: 0, high: Infinity, next: 'Give litres of water, 0 or more.' })
  const share = massFraction(compound, atom)
  demand(`${atom} in ${compound}`, share, {
    low: 0,
    high: 1,
    aboveLow: true,
    next: `Choose a compound that holds ${atom}.`,
  })
  return (rise_mg_L * volume_L) / share / 1000
}
