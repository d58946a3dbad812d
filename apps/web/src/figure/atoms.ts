import type { Atom } from '@holdfast/ecosystem'
import { molarMass } from '@holdfast/quantities'

/** g/mol */
export const atomicMass: Readonly<Record<Atom, number>> = {
  N: molarMass('N'),
  P: molarMass('P'),
  C: molarMass('C'),
  Si: molarMass('Si'),
}

/** µmol of an atom as mg of it. */
export const asMilligrams = (amount_umol: number, atom: Atom) => (amount_umol * atomicMass[atom]) / 1000

export const atomNames: Readonly<Record<Atom, string>> = {
  N: 'nitrogen',
  P: 'phosphorus',
  C: 'carbon',
  Si: 'silicon',
}
