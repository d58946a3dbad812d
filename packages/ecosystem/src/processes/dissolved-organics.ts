import { outside, water } from '../accounts/index.ts'
import { type Account, amount, fact, process, split } from '../declare/index.ts'
import { type InSystem, temperature } from './readings.ts'

interface Class extends InSystem {
  readonly organics: Account
  readonly decayFact: string
  /** Only what is labile turns into the lasting classes. */
  readonly lasting: boolean
}

const classes: readonly (readonly [string, Account, string, boolean])[] = [
  ['labile', water.labile, 'min.doc.k_labile', true],
  ['skimmable', water.skimmable, 'min.doc.k_semilabile', false],
  ['resistant', water.resistant, 'min.doc.k_semilabile', false],
]

const products = (inorganic: Account) => [
  { to: water.skimmable, share: 'lasting * lastingShare * skimmableShare' },
  { to: water.resistant, share: 'lasting * lastingShare * (1 - skimmableShare)' },
  { to: inorganic, share: 'rest' },
]

export const dissolvedOrganics = process<Class>({
  id: 'dissolved-organics',
  title: 'Dissolved organics',
  says: 'Dissolved organics are used up in days; a part turns into lasting ones, of which foam can take some.',
  source: 'hansell-2013',
  each: (system) =>
    classes.map(([name, organics, decayFact, lasting]) => ({
      name,
      of: { system, organics, decayFact, lasting },
    })),
  reads: {
    nitrogen: amount(({ organics }) => organics, 'N'),
    phosphorus: amount(({ organics }) => organics, 'P'),
    carbon: amount(({ organics }) => organics, 'C'),
    temperature,
    lasting: {
      read: 'setting',
      id: ({ organics }) => `lasting ${organics.id}`,
      unit: '1',
      value: ({ lasting }) => (lasting ? 1 : 0),
    },
  },
  parameters: {
    decay: fact(({ decayFact }) => decayFact, 'd⁻¹'),
    warming: fact('min.q10', '1'),
    lastingShare: fact('doc.resistant_share', '1'),
    skimmableShare: fact('doc.skimmable_share', '1'),
  },
  terms: { speed: { is: 'decay * q10(warming, temperature)', unit: 'd⁻¹' } },
  transfers: [
    split({
      atom: 'N',
      from: ({ organics }) => organics,
      rate: 'speed * nitrogen',
      into: products(water.ammonia),
    }),
    split({
      atom: 'P',
      from: ({ organics }) => organics,
      rate: 'speed * phosphorus',
      into: products(water.phosphate),
    }),
    split({
      atom: 'C',
      from: ({ organics }) => organics,
      rate: 'speed * carbon',
      into: products(outside.inorganicCarbon),
    }),
  ],
})
