import { molarMass, type Substance } from '@holdfast/quantities'
import { demand } from '../out-of-range.ts'

/** Pure compounds without water of crystals; each formula unit holds one atom of N or of P. */
const formulas = {
  'ammonium chloride': 'NH4Cl',
  'sodium nitrate': 'NaNO3',
  'potassium nitrate': 'KNO3',
  'monopotassium phosphate': 'KH2PO4',
  'disodium phosphate': 'Na2HPO4',
} as const satisfies Record<string, Substance>

export type Compound = keyof typeof formulas

export const compounds = Object.keys(formulas) as readonly Compound[]

/** @returns the compound of that name, or undefined if we know none */
export function compoundNamed(name: string): Compound | undefined {
  const plain = name.trim().toLowerCase()
  return compounds.find((compound) => compound === plain)
}

/**
 * Share of a compound's mass that is N or P.
 *
 * @returns 0 to 1; 0 if it holds none of that atom
 * @source the formula and the atomic weights of @holdfast/quantities
 */
export function massFraction(compound: Compound, atom: 'N' | 'P'): number {
  const formula = formulas[compound]
  const holds = /PO4/.test(formula) ? 'P' : 'N'
  return holds === atom ? molarMass(atom) / molarMass(formula) : 0
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
