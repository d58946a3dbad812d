import { animals, bed, outside } from '../accounts/index.ts'
import { amount, carry, fact, once, process, setting } from '../declare/index.ts'
import { takenOutSetting } from './crew-changes.ts'

/** Live mass of animals that are no grazers of the catalogue and die or go, g. */
export const goneMass = 'animals gone'

export const animalsLeave = process<undefined>({
  id: 'animals lost',
  title: 'Animals lost',
  says: 'A fish that dies leaves its body to the water, unless it was taken out.',
  source: 'mass balance',
  event: true,
  each: () => once(true),
  reads: {
    mass: setting(goneMass, 'g', () => 0),
    takenOut: setting(takenOutSetting, '1', () => 0),
    fish: amount(animals.fish, 'N'),
    brought: amount(animals.brought, 'N'),
  },
  parameters: { bodyN: fact('fish.body_n', 'µmol g⁻¹') },
  // Of all such bodies together the share that they were.
  terms: { gone: { is: 'least(part(mass * bodyN, fish + brought), 1)', unit: '1' } },
  transfers: [animals.fish, animals.brought].flatMap((from) => [
    carry({ from, to: outside.animals, atoms: ['N', 'P', 'C'], rate: 'gone * takenOut' }),
    carry({ from, to: bed.fast, atoms: ['N', 'P', 'C'], rate: 'gone * (1 - takenOut)' }),
  ]),
})
