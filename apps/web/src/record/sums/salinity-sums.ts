import { listed, type Sum, warm } from './sum.ts'

const shown = { factor: 1, unit: 'practical salinity' }

/** What an instrument's reading says of salinity. */
export const salinitySums: readonly Sum[] = [
  {
    id: 'specific-gravity',
    asks: 'What salinity is this specific gravity?',
    says: 'A float or a refractometer compares the weight of the water with that of fresh water; the temperature printed on it decides what its figure means.',
    reckon: listed('salinity_from_specific_gravity'),
    blanks: [
      { input: 'SG', label: 'Specific gravity', kind: 'gravity', unit: '', start: 1.026 },
      warm(-2, 40),
      {
        input: 't_ref',
        label: 'Temperature printed on the instrument',
        kind: 'temperature',
        unit: '°C',
        start: 25,
        holds: [-2, 40],
      },
    ],
    shown,
    source: 'Millero & Poisson 1981',
  },
  {
    id: 'conductivity',
    asks: 'What salinity is this conductivity?',
    says: 'A probe measures how well the water conducts, and salinity follows from that and the temperature. Take the figure before any correction of the probe.',
    reckon: listed('practical_salinity'),
    blanks: [
      { input: 'C', label: 'Conductivity at that temperature', kind: 'number', unit: 'mS/cm', start: 53 },
      { input: 't', label: 'Temperature of the water', kind: 'temperature', unit: '°C', start: 25 },
    ],
    shown,
    source: 'PSS-78 (Lewis 1980), which holds for salinity 2 to 42 and −2 to 35 °C',
  },
]
