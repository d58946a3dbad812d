import { consumptionId, type FactsOfSystem, mouth } from '@holdfast/facts'
import { patches } from '../accounts/index.ts'
import { fact, gathered, setting } from '../declare/index.ts'
import type { Surface } from '../system.ts'
import { living, type Member } from './crew.ts'
import { livesAt, reaches } from './reach.ts'
import { temperature } from './readings.ts'
import { patchShare } from './stands.ts'

type Eater = Pick<Member, 'system' | 'taxon' | 'animal' | 'animals'>

/** What a taxon gets to of some surfaces, in the vessels that it lives in, m². */
export const reachedOf = (
  surfaces: readonly Surface[],
  { system, taxon, animals }: Eater,
  facts: FactsOfSystem,
): number =>
  surfaces.reduce(
    (sum, surface) =>
      sum +
      patches
        .filter(
          (patch) =>
            livesAt(system, taxon, surface) && reaches(surface, taxon, patch, animals.adult_size_cm, facts),
        )
        .reduce((part, patch) => part + surface.area_m2 * patchShare(surface, patch, facts), 0),
    0,
  )

/** So many degrees above the highest it bears it eats nothing more. */
export const endOfAppetite = 3

const reachableArea = (eater: Eater, facts: FactsOfSystem): number =>
  reachedOf(eater.system.surfaces, eater, facts)

const temperatureOf = (name: string, of: (eater: Eater) => number) =>
  setting<Eater>(({ taxon }) => `${name} ${taxon}`, '°C', of)

/** What all animals of a taxon take in a day, by the food they reach, warmth and what else they are fed. */
export const appetite = {
  reads: {
    living,
    temperature,
    food: gathered<Eater>('food', ({ taxon }) => taxon, 'g'),
    reachable: setting<Eater>(({ taxon }) => `reachable ${taxon}`, 'm²', reachableArea),
    best: temperatureOf('best temperature', ({ animal }) => animal.temperature_C.best),
    hottest: temperatureOf('highest temperature', ({ animal }) => animal.temperature_C.max),
    tooHot: temperatureOf('no appetite', ({ animal }) => animal.temperature_C.max + endOfAppetite),
  },
  parameters: {
    appetite: fact<Eater>(({ taxon }) => consumptionId(taxon), 'g d⁻¹'),
    appetiteLeft: fact<Eater>(({ animal }) => `grazing.appetite_left.${animal.appetite}`, '1'),
    half: fact<Eater>(({ animal }) => mouth(animal.mouth).halfSaturation, 'g m⁻²'),
    warming: fact<Eater>('grazing.q10', '1'),
  },
  terms: {
    density: { is: 'part(food, reachable)', unit: 'g m⁻²' },
    intake: {
      is: 'living * appetite * appetiteLeft * warmth(warming, temperature, best) * fallingLine(temperature, hottest, tooHot, 0) * monod(density, half)',
      unit: 'g d⁻¹',
    },
  },
} as const
