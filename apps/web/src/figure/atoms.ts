import type { Atom } from '@holdfast/ecosystem'

/** g/mol. Source: IUPAC abridged standard atomic weights, 2021 (from memory). */
export const atomicMass: Readonly<Record<Atom, number>> = { N: 14.007, P: 30.974, C: 12.011 }

/** µmol of an atom as mg of it. */
export const asMilligrams = (amount_umol: number, atom: Atom) => (amount_umol * atomicMass[atom]) / 1000

export const atomNames: Readonly<Record<Atom, string>> = { N: 'nitrogen', P: 'phosphorus', C: 'carbon' }
