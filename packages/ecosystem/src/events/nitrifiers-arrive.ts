import { outside } from '../accounts/index.ts'
import { fact, move, process } from '../declare/index.ts'
import { ammoniaOxidisers, type Group, inSystem, nitriteOxidisers } from '../processes/nitrifiers.ts'
import { type KindOfRock, withNitrifiers } from '../processes/rock-kinds.ts'
import { arriving } from './dead-matter-arrives.ts'

type Arriving = Group & KindOfRock

/** Half of what lives on rock is of the quick type, half of the slow one. */
export const nitrifiersArrive = process<Arriving>({
  id: 'nitrifiers arrive',
  title: 'Nitrifiers on new rock',
  says: 'Live rock brings nitrifiers; on dry rock there are hardly any.',
  source: 'holdfast-estimate',
  event: true,
  each: (system) =>
    inSystem(system, [...ammoniaOxidisers, ...nitriteOxidisers]).flatMap(({ name, of }) =>
      withNitrifiers(system).map((rock) => ({ name: `${name} on ${rock.kind}`, of: { ...of, ...rock } })),
    ),
  reads: { mass: arriving },
  parameters: {
    share: fact(({ by }) => by, '1'),
    areal: fact('nit.areal.max_sea', 'µmol m⁻² d⁻¹'),
    rockArea: fact('nit.area.rock', 'm² kg⁻¹'),
    yield: fact(({ yieldFact }) => yieldFact, '1'),
    fastestRich: fact(({ richFact }) => richFact, 'd⁻¹'),
  },
  transfers: [
    move({
      atom: 'N',
      from: outside.rock,
      to: ({ group }) => group,
      rate: 'mass * rockArea * share * areal * yield / fastestRich / 2',
    }),
  ],
})
