import { outside, rock } from '../accounts/index.ts'
import { fact, move, process, setting } from '../declare/index.ts'
import { type KindOfRock, withDeadMatter } from '../processes/rock-kinds.ts'

/** Setting that holds the mass of a kind of rock that comes in, kg. */
export const arrivingRock = (kind: string): string => `rock added ${kind}`

/** What every event of arriving rock reads. */
export const arriving = setting<KindOfRock>(
  ({ kind }) => arrivingRock(kind),
  'kg',
  () => 0,
)

export const deadMatterArrives = process<KindOfRock>({
  id: 'dead matter arrives',
  title: 'Dead matter in new rock',
  says: 'Rock of the sea that is not cured brings what has died in it.',
  source: 'holdfast-estimate',
  event: true,
  each: (system) => withDeadMatter(system).map((of) => ({ name: of.kind, of })),
  reads: { mass: arriving },
  parameters: {
    nitrogen: fact(({ by }) => `leach.n.${by}`, 'µmol kg⁻¹'),
    phosphorus: fact(({ by }) => `leach.p.${by}`, 'µmol kg⁻¹'),
    carbonForNitrogen: fact('leach.c_per_n', '1'),
  },
  transfers: [
    move({ atom: 'N', from: outside.rock, to: rock.buried, rate: 'mass * nitrogen' }),
    move({ atom: 'P', from: outside.rock, to: rock.buried, rate: 'mass * phosphorus' }),
    move({ atom: 'C', from: outside.rock, to: rock.buried, rate: 'mass * nitrogen * carbonForNitrogen' }),
  ],
})
