import { animals, outside } from '../accounts/index.ts'
import { fact, move, once, process, setting } from '../declare/index.ts'

/** Live mass that comes in (g); below nothing when animals are lost or given away. */
export const broughtMass = 'animals brought'

export const animalsArrive = process<undefined>({
  id: 'animals added',
  title: 'Animals added',
  says: 'An animal brings the nitrogen and phosphorus of its body.',
  source: 'sterner-george-2000',
  event: true,
  each: () => once(true),
  reads: { mass: setting(broughtMass, 'g', () => 0) },
  parameters: {
    bodyN: fact('fish.body_n', 'µmol g⁻¹'),
    bodyP: fact('fish.body_p', 'µmol g⁻¹'),
    bodyC: fact('fish.body_c', 'µmol g⁻¹'),
  },
  transfers: [
    move({ atom: 'N', from: outside.animals, to: animals.brought, rate: 'mass * bodyN' }),
    move({ atom: 'P', from: outside.animals, to: animals.brought, rate: 'mass * bodyP' }),
    move({ atom: 'C', from: outside.animals, to: animals.brought, rate: 'mass * bodyC' }),
  ],
})
