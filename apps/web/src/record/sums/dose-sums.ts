import { molarMass } from '@holdfast/quantities'
import { type Compound, doseMass } from '@holdfast/seawater'
import { litres, type Sum, within } from './sum.ts'

const ions = {
  nitrate: { formula: 'NO3', atom: 'N', start: 2 },
  phosphate: { formula: 'PO4', atom: 'P', start: 0.03 },
} as const

/** How much of a pure salt raises an ion in the net water. */
function dose(compound: Compound, ion: keyof typeof ions, cautions: readonly string[]): Sum {
  const { formula, atom, start } = ions[ion]
  const ofTheAtom = molarMass(atom) / molarMass(formula)
  return {
    id: `${ion} by ${compound}`,
    asks: `How much ${compound} raises ${ion}?`,
    says: `The dry salt that brings your net water so much more ${ion}, if nothing takes it up meanwhile.`,
    reckon: ({ rise = Number.NaN, volume_L = Number.NaN }) =>
      within('g', () => doseMass(compound, atom, rise * ofTheAtom, volume_L)),
    blanks: [
      { input: 'rise', label: `Rise wanted, as ${formula}`, kind: 'number', unit: 'mg/L', start },
      litres('volume_L', 'Net water', 600),
    ],
    shown: { factor: 1, unit: 'g, dry and pure' },
    source: 'mass balance with the molar masses',
    caution: cautions.join(' '),
  }
}

const slowly =
  'Give it in parts over days and measure between: corals mind a jump more than a want (common practice).'
const oxidiser =
  'A nitrate makes fire worse: keep the salt dry, closed and away from anything that burns, out of the reach of children, and off your eyes.'
const dust = 'The salt irritates eyes and skin: dissolve it in a cup of fresh water first.'

/** Salts that raise what the water lacks. */
export const doseSums: readonly Sum[] = [
  dose('sodium nitrate', 'nitrate', [oxidiser, slowly]),
  dose('potassium nitrate', 'nitrate', [oxidiser, slowly, 'It raises potassium too.']),
  dose('monopotassium phosphate', 'phosphate', [dust, slowly, 'Rock takes much of it up.']),
]
