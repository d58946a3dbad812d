import { outside, water } from '../accounts/index.ts'
import { type Account, amount, fact, process, split } from '../declare/index.ts'
import { carbonDosingOf } from './carbon-dosing.ts'
import { type InSystem, temperature } from './readings.ts'

const products = (dissolved: Account) => [
  { to: dissolved, share: 'back' },
  { to: water.particles, share: 'rest' },
]

export const bacterialLoss = process<InSystem>({
  id: 'bacterial-loss',
  title: 'Bacteria eaten and burst',
  says: 'Most bacteria are eaten or burst within days: the greater part is dissolved again at once, the rest is waste.',
  source: 'holdfast-estimate',
  each: (system) => (carbonDosingOf(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    nitrogen: amount(water.bacteria, 'N'),
    phosphorus: amount(water.bacteria, 'P'),
    carbon: amount(water.bacteria, 'C'),
    temperature,
  },
  parameters: {
    death: fact('cd.death', 'd⁻¹'),
    warming: fact('min.q10', '1'),
    back: fact('cd.eaten_back', '1'),
  },
  terms: { speed: { is: 'death * q10(warming, temperature)', unit: 'd⁻¹' } },
  transfers: [
    split({ atom: 'N', from: water.bacteria, rate: 'speed * nitrogen', into: products(water.ammonia) }),
    split({ atom: 'P', from: water.bacteria, rate: 'speed * phosphorus', into: products(water.phosphate) }),
    split({
      atom: 'C',
      from: water.bacteria,
      rate: 'speed * carbon',
      into: products(outside.inorganicCarbon),
    }),
  ],
})
