import { listed, litres, type Sum, salinity, warm } from './sum.ts'

const source = 'mass balance, density after Millero & Poisson 1981'
const exchange = 'Change salinity slowly, by no more than 0.5 up or 1 down in a day (common practice).'

/** Waters and salt put together. */
export const mixingSums: readonly Sum[] = [
  {
    id: 'salt',
    asks: 'How much salt for so much new water?',
    says: 'The salt that turns so much fresh water into sea water of the salinity you want.',
    reckon: listed('salt_mass_for_volume'),
    blanks: [
      { ...salinity('S', 'Salinity wanted'), holds: [0, 42] },
      warm(-2, 40),
      litres('volume_L', 'Finished water', 60),
      {
        input: 'salt_fraction',
        label: 'Sea salt in 1 g of the mix as weighed',
        kind: 'number',
        unit: 'g',
        start: 0.9,
      },
    ],
    shown: { factor: 0.001, unit: 'kg of mix' },
    source,
    caution:
      'Dry salt warms the water as it dissolves, and its dust irritates eyes and lungs: add the salt to the water, in parts, never water to the salt, and let the mix cool before it meets an animal. Mixes differ in moisture: weigh out a little less, mix, measure, then mend.',
  },
  {
    id: 'mix',
    asks: 'What salinity have two waters together?',
    says: 'Salt is kept when two waters meet: the salinity of both together, before you pour.',
    reckon: listed('mix_two_waters'),
    blanks: [
      litres('volume1_L', 'First water', 500),
      { ...salinity('S1', 'Salinity of the first water'), holds: [0, 42] },
      litres('volume2_L', 'Second water', 60),
      { ...salinity('S2', 'Salinity of the second water', 30), holds: [0, 42] },
      warm(-2, 40),
    ],
    shown: { factor: 1, unit: 'practical salinity' },
    source,
    caution: exchange,
  },
  {
    id: 'top-off',
    asks: 'How much fresh water brings salinity down?',
    says: 'The fresh water that makes up for evaporation, or thins water that has grown too salt.',
    reckon: listed('top_off_volume'),
    blanks: [
      salinity('S', 'Salinity now', 36.5),
      salinity('S_target', 'Salinity wanted'),
      litres('volume_L', 'Net water now', 580),
      warm(-2, 40),
    ],
    shown: { factor: 1, unit: 'L of fresh water' },
    source,
    caution: exchange,
  },
  {
    id: 'replace',
    asks: 'How much water must be replaced to reach a salinity?',
    says: 'How much of the tank’s water to take out and replace by water of another salinity.',
    reckon: listed('replace_volume_for_salinity'),
    blanks: [
      salinity('S', 'Salinity now', 33),
      salinity('S_target', 'Salinity wanted', 34),
      salinity('S_new', 'Salinity of the new water', 38),
      litres('volume_L', 'Net water', 600),
      warm(-2, 40),
    ],
    shown: { factor: 1, unit: 'L to replace' },
    source,
    caution: exchange,
  },
  {
    id: 'changes',
    asks: 'What is left after several water changes?',
    says: 'Each change takes its share of what is left, so that five changes of a fifth are no whole change.',
    reckon: listed('concentration_after_changes'),
    blanks: [
      { input: 'value', label: 'Concentration now', kind: 'number', unit: 'mg/L', start: 20 },
      {
        input: 'value_new',
        label: 'Concentration of the new water',
        kind: 'number',
        unit: 'mg/L',
        start: 0,
      },
      {
        input: 'fraction',
        label: 'Share of the net water changed each time',
        kind: 'number',
        unit: '%',
        start: 20,
        holds: [0, 100],
        factor: 0.01,
      },
      { input: 'count', label: 'Changes', kind: 'number', unit: '', start: 5 },
    ],
    shown: { factor: 1, unit: 'mg/L' },
    source: 'mass balance',
    caution: 'What feed and rock bring in meanwhile is not in this sum; the outlook has it.',
  },
]
