import { askWater, densityEos80 } from '@holdfast/seawater'
import { listed, type Sum, salinity, warm, within } from './sum.ts'

/** What the water does to animals and skeletons. */
export const chemistrySums: readonly Sum[] = [
  {
    id: 'ammonia',
    asks: 'How much of the ammonia is the poisonous NH3?',
    says: 'A kit counts NH3 and NH4 together. How much of it is NH3, which harms, hangs on pH and temperature.',
    reckon: listed('unionised_ammonia_fraction', { method: 'clegg_whitfield_1995' }),
    blanks: [
      { ...salinity('S', 'Salinity'), holds: [10, 40] },
      warm(2, 35),
      {
        input: 'pH_nbs',
        label: 'pH of a probe set with ordinary (NBS) buffers',
        kind: 'number',
        unit: '',
        start: 8.2,
        holds: [6, 10],
      },
    ],
    shown: { factor: 100, unit: '% of total ammonia' },
    source: 'Clegg & Whitfield 1995',
    caution:
      'NH3 harms at hundredths of a milligram of N in a litre. With ammonia in the water change much, and matched, at once.',
  },
  {
    id: 'oxygen',
    asks: 'How much oxygen does the water hold beside air?',
    says: 'What water can take up from the air at most: the more, the colder and the fresher it is.',
    reckon: listed('oxygen_saturation_mg_L'),
    // The lower end is where sea water of 35 freezes.
    blanks: [{ ...salinity('S', 'Salinity'), holds: [0, 42] }, warm(-1.9, 40)],
    shown: { factor: 1, unit: 'mg/L' },
    source: 'Garcia & Gordon 1992',
    caution: 'At night a tank stands below this; under 5 mg/L act, under 4 at once.',
  },
  {
    id: 'aragonite',
    asks: 'How far is aragonite saturated?',
    says: 'Corals build with aragonite. Above 1 it can form, below 1 it dissolves.',
    reckon: ({ S = Number.NaN, t = Number.NaN, pH_total, alkalinity = Number.NaN }) => {
      // A kit counts in a litre, the carbonate system in a kilogram.
      const perKilogram = within('umol/kg', () => (1000 * alkalinity) / densityEos80(S, t))
      if (!perKilogram.ok) return perKilogram
      return askWater('aragonite_saturation', { S, t, pH_total, TA_umol_kg: perKilogram.value })
    },
    blanks: [
      { ...salinity('S', 'Salinity'), holds: [19, 42] },
      warm(5, 35),
      { input: 'pH_total', label: 'pH on the total scale', kind: 'number', unit: '', start: 8.05 },
      { input: 'alkalinity', label: 'Alkalinity', kind: 'alkalinity', unit: 'dKH', start: 8 },
    ],
    shown: { factor: 1, unit: 'times saturated' },
    source: 'Lueker et al. 2000, Mucci 1983',
    caution:
      'A pH is known to 0.03 at best, and this figure to a tenth. Alkalinity moves by no more than 0.5 dKH in a day (common practice).',
  },
]
