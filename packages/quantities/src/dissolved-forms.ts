import type { NextStep, QuestionCode } from './issue.ts'
import type { Substance } from './molar-masses.ts'

/** What a mass concentration is of: the ion or oxide, the atom in it, or chalk with as many moles. */
export type Form =
  | 'NO3'
  | 'NO2'
  | 'NH3'
  | 'NH4'
  | 'PO4'
  | 'N'
  | 'P'
  | 'SiO2'
  | 'SiO3'
  | 'SiO4'
  | 'Si'
  | 'Ca'
  | 'Mg'
  | 'K'
  | 'CaCO3'

export type Nutrient = 'nitrate' | 'nitrite' | 'ammonia' | 'phosphate'
export type Mineral = 'silicate' | 'calcium' | 'magnesium' | 'potassium'

interface NamedForm {
  readonly form: Form & Substance
  /** What is shown, and can be typed. */
  readonly shown: string
  /** What else people type, in small letters, without charges, with '-' for every dash. */
  readonly names: readonly string[]
}

export interface Dissolved {
  readonly where: string
  readonly next: NextStep
  /** The form in which the project keeps it. */
  readonly canonical: Form
  /** The form of a figure that names none, where the trade knows one only: an element is itself. */
  readonly bare?: Form
  readonly forms: readonly NamedForm[]
  /** The question where no form is told; that of ion or atom where nothing else is said. */
  readonly asks?: QuestionCode
  /** Words that name the quantity and settle no form: '5 mg/L nitrate'. */
  readonly saysNothing: readonly string[]
}

const element = (form: 'Ca' | 'Mg' | 'K', ...names: string[]): NamedForm => ({
  form,
  shown: form,
  names: [form.toLowerCase(), ...names],
})
const asChalk: NamedForm = { form: 'CaCO3', shown: 'CaCO3', names: ['caco3', 'as calcium carbonate'] }

/** Each dissolved quantity with its forms; the molar ratio between the forms of one is always 1. */
export const dissolved: Readonly<Record<Nutrient | Mineral, Dissolved>> = {
  nitrate: {
    where: 'Nitrate',
    next: 'give-nitrate',
    canonical: 'NO3',
    forms: [
      { form: 'NO3', shown: 'NO3', names: ['no3', 'as nitrate'] },
      {
        form: 'N',
        shown: 'NO3-N',
        names: ['no3-n', 'no3n', 'n', 'n-no3', 'nitrate-n', 'nitrate-nitrogen', 'as nitrogen'],
      },
    ],
    saysNothing: ['nitrate'],
  },
  nitrite: {
    where: 'Nitrite',
    next: 'give-nitrite',
    canonical: 'NO2',
    forms: [
      { form: 'NO2', shown: 'NO2', names: ['no2', 'as nitrite'] },
      {
        form: 'N',
        shown: 'NO2-N',
        names: ['no2-n', 'no2n', 'n', 'n-no2', 'nitrite-n', 'nitrite-nitrogen', 'as nitrogen'],
      },
    ],
    saysNothing: ['nitrite'],
  },
  ammonia: {
    where: 'Ammonia',
    next: 'give-ammonia',
    canonical: 'N',
    forms: [
      {
        form: 'N',
        shown: 'NH3-N',
        names: ['nh3-n', 'nh4-n', 'nh3n', 'nh4n', 'n', 'tan', 'tan-n', 'ammonia-n', 'as nitrogen'],
      },
      { form: 'NH3', shown: 'NH3', names: ['nh3'] },
      { form: 'NH4', shown: 'NH4', names: ['nh4', 'as ammonium'] },
    ],
    saysNothing: ['ammonia', 'ammonium'],
  },
  phosphate: {
    where: 'Phosphate',
    next: 'give-phosphate',
    canonical: 'PO4',
    forms: [
      { form: 'PO4', shown: 'PO4', names: ['po4', 'as phosphate'] },
      {
        form: 'P',
        shown: 'PO4-P',
        names: ['po4-p', 'po4p', 'p', 'p-po4', 'phosphate-p', 'phosphorus', 'as phosphorus'],
      },
    ],
    saysNothing: ['phosphate'],
  },
  silicate: {
    where: 'Silicate',
    next: 'give-silicate',
    canonical: 'SiO2',
    forms: [
      { form: 'SiO2', shown: 'SiO2', names: ['sio2', 'silica', 'as silica'] },
      { form: 'Si', shown: 'Si', names: ['si', 'sio2-si', 'silicon', 'as silicon'] },
      { form: 'SiO3', shown: 'SiO3', names: ['sio3'] },
      { form: 'SiO4', shown: 'SiO4', names: ['sio4'] },
    ],
    asks: 'which-silicate',
    saysNothing: ['silicate'],
  },
  calcium: {
    where: 'Calcium',
    next: 'give-calcium',
    canonical: 'Ca',
    bare: 'Ca',
    forms: [element('Ca', 'calcium', 'as calcium'), asChalk],
    saysNothing: [],
  },
  magnesium: {
    where: 'Magnesium',
    next: 'give-magnesium',
    canonical: 'Mg',
    bare: 'Mg',
    forms: [element('Mg', 'magnesium', 'as magnesium'), asChalk],
    saysNothing: [],
  },
  potassium: {
    where: 'Potassium',
    next: 'give-potassium',
    canonical: 'K',
    bare: 'K',
    forms: [element('K', 'potassium', 'as potassium')],
    saysNothing: [],
  },
}

/** The form by any of its names, charges aside: 'NO₃⁻', 'po43-', 'NO3-N'. */
export function formNamed({ forms }: Dissolved, word: string): NamedForm | undefined {
  const plain = word
    .toLowerCase()
    .replace(/[₀-₉]/g, (digit) => String('₀₁₂₃₄₅₆₇₈₉'.indexOf(digit)))
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]*[⁺⁻]+/g, '')
  // the 3 of 'no3-' belongs to the ion, that of 'po43-' to the charge
  const spellings = [plain, plain.replace(/[-+]+$/, ''), plain.replace(/\^?\d[-+]$/, '')]
  for (const spelling of spellings) {
    const found = forms.find(({ names }) => names.includes(spelling))
    if (found !== undefined) return found
  }
  return undefined
}
