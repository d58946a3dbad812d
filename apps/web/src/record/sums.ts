import type { InputName } from '@holdfast/seawater'

/** A blank of a sum: which input it fills, what it is called, and a sensible start. */
export interface Blank {
  readonly input: InputName
  readonly label: string
  readonly unit: string
  readonly start: number
}

/** A sum of sea water as a keeper asks it. */
export interface Sum {
  readonly id: string
  readonly asks: string
  /** Id of the quantity in the list of sea water. */
  readonly quantity: string
  readonly blanks: readonly Blank[]
  /** Inputs that are no blank, such as which published form. */
  readonly fixed?: Readonly<Partial<Record<InputName, string>>>
  /** A factor and a unit that people read more easily than those of the list. */
  readonly shown: { readonly factor: number; readonly unit: string }
  /** Author and year of the form. */
  readonly source: string
  readonly caution?: string
}

const salinity = (input: InputName, label: string, start = 35): Blank => ({ input, label, unit: '', start })
const warm: Blank = { input: 't', label: 'Temperature of the water', unit: '°C', start: 25 }
const litres = (input: InputName, label: string, start: number): Blank => ({ input, label, unit: 'L', start })
const practical = { factor: 1, unit: 'practical salinity' }
const exchange = 'Change salinity slowly, by no more than 0.5 up or 1 down in a day (common practice).'

/** The sums of the page, in the order in which they are wanted. */
export const sums: readonly Sum[] = [
  {
    id: 'specific-gravity',
    asks: 'What salinity is this specific gravity?',
    quantity: 'salinity_from_specific_gravity',
    blanks: [
      { input: 'SG', label: 'Specific gravity', unit: '', start: 1.026 },
      warm,
      { input: 't_ref', label: 'Temperature printed on the instrument', unit: '°C', start: 25 },
    ],
    shown: practical,
    source: 'Millero & Poisson 1981',
  },
  {
    id: 'conductivity',
    asks: 'What salinity is this conductivity?',
    quantity: 'practical_salinity',
    blanks: [{ input: 'C', label: 'Conductivity at that temperature', unit: 'mS/cm', start: 53 }, warm],
    shown: practical,
    source: 'PSS-78, Lewis 1980',
  },
  {
    id: 'salt',
    asks: 'How much salt for so much new water?',
    quantity: 'salt_mass_for_volume',
    blanks: [
      salinity('S', 'Salinity wanted'),
      warm,
      litres('volume_L', 'Finished water', 60),
      { input: 'salt_fraction', label: 'Sea salt in 1 g of the mix as weighed', unit: 'g', start: 0.9 },
    ],
    shown: { factor: 0.001, unit: 'kg of mix' },
    source: 'mass balance, density after Millero & Poisson 1981',
    caution: 'Mixes differ in moisture: weigh out a little less, mix, measure, then mend.',
  },
  {
    id: 'mix',
    asks: 'What salinity have two waters together?',
    quantity: 'mix_two_waters',
    blanks: [
      litres('volume1_L', 'First water', 500),
      salinity('S1', 'Its salinity'),
      litres('volume2_L', 'Second water', 60),
      salinity('S2', 'Its salinity', 30),
      warm,
    ],
    shown: practical,
    source: 'mass balance, density after Millero & Poisson 1981',
    caution: exchange,
  },
  {
    id: 'top-off',
    asks: 'How much fresh water brings salinity down?',
    quantity: 'top_off_volume',
    blanks: [
      salinity('S', 'Salinity now', 36.5),
      salinity('S_target', 'Salinity wanted'),
      litres('volume_L', 'Net water now', 580),
      warm,
    ],
    shown: { factor: 1, unit: 'L of fresh water' },
    source: 'mass balance, density after Millero & Poisson 1981',
    caution: exchange,
  },
  {
    id: 'replace',
    asks: 'How much water must be replaced to reach a salinity?',
    quantity: 'replace_volume_for_salinity',
    blanks: [
      salinity('S', 'Salinity now', 33),
      salinity('S_target', 'Salinity wanted', 34),
      salinity('S_new', 'Salinity of the new water', 38),
      litres('volume_L', 'Net water', 600),
      warm,
    ],
    shown: { factor: 1, unit: 'L to replace' },
    source: 'mass balance, density after Millero & Poisson 1981',
    caution: exchange,
  },
  {
    id: 'changes',
    asks: 'What is left after several water changes?',
    quantity: 'concentration_after_changes',
    blanks: [
      { input: 'value', label: 'Concentration now', unit: 'mg/L', start: 20 },
      { input: 'value_new', label: 'Concentration of the new water', unit: 'mg/L', start: 0 },
      { input: 'fraction', label: 'Share of the net water changed each time', unit: '0 to 1', start: 0.2 },
      { input: 'count', label: 'Changes', unit: '', start: 5 },
    ],
    shown: { factor: 1, unit: 'mg/L' },
    source: 'mass balance',
    caution: 'What feed and rock bring in meanwhile is not in this sum; the outlook has it.',
  },
  {
    id: 'ammonia',
    asks: 'How much of the ammonia is the poisonous NH3?',
    quantity: 'unionised_ammonia_fraction',
    blanks: [
      salinity('S', 'Salinity'),
      warm,
      { input: 'pH_nbs', label: 'pH of a probe set with ordinary (NBS) buffers', unit: '', start: 8.2 },
    ],
    fixed: { method: 'clegg_whitfield_1995' },
    shown: { factor: 100, unit: '% of total ammonia' },
    source: 'Clegg & Whitfield 1995',
    caution:
      'NH3 harms at hundredths of a milligram of N in a litre. With ammonia in the water change much, and matched, at once.',
  },
  {
    id: 'oxygen',
    asks: 'How much oxygen does the water hold beside air?',
    quantity: 'oxygen_saturation_mg_L',
    blanks: [salinity('S', 'Salinity'), warm],
    shown: { factor: 1, unit: 'mg/L' },
    source: 'Garcia & Gordon 1992',
    caution: 'At night a tank stands below this; under 5 mg/L act, under 4 at once.',
  },
  {
    id: 'aragonite',
    asks: 'How far is aragonite saturated?',
    quantity: 'aragonite_saturation',
    blanks: [
      { input: 'TA_umol_kg', label: 'Total alkalinity', unit: 'µmol/kg', start: 2800 },
      { input: 'pH_total', label: 'pH on the total scale', unit: '', start: 8.05 },
      salinity('S', 'Salinity'),
      warm,
    ],
    shown: { factor: 1, unit: 'times saturated' },
    source: 'Lueker et al. 2000, Mucci 1983',
    caution: 'Alkalinity moves by no more than 0.5 dKH in a day (common practice).',
  },
]
