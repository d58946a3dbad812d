import { outside, rock } from '../accounts/index.ts'
import { fact, move, process } from '../declare/index.ts'
import { type KindOfRock, withExchangeable } from '../processes/rock-kinds.ts'
import { arriving } from './dead-matter-arrives.ts'

export const exchangeableArrives = process<KindOfRock>({
  id: 'exchangeable phosphate arrives',
  title: 'Phosphate in new rock',
  says: 'Dried rock brings phosphate that it gives back over months.',
  source: 'holdfast-estimate',
  event: true,
  each: (system) => withExchangeable(system).map((of) => ({ name: of.kind, of })),
  reads: { mass: arriving },
  parameters: { exchangeable: fact(({ by }) => `leach.exchangeable.${by}`, 'µmol kg⁻¹') },
  transfers: [move({ atom: 'P', from: outside.rock, to: rock.exchangeable, rate: 'mass * exchangeable' })],
})
