import type { Band } from '@holdfast/crew-plan'
import type { Exposed, GrazerReach, PlaceReach } from '@holdfast/reach'
import type { ComputedFigure, Derivation } from '../../figure/computed.ts'
import { takenIn } from '../../figure/entry-ids.ts'
import type { SystemData } from '../../shell/system-data.ts'
import type { ReachTold } from '../../worker/answers.ts'
import { kindName, placeName } from './words.ts'

export interface ReachGround {
  readonly told: ReachTold
  readonly data: SystemData
}

/** Grams or, where little grows anywhere, milligrams: the same for all figures of a page. */
const unitOf = ({ told: { reach } }: ReachGround): { readonly unit: string; readonly factor: number } =>
  reach.places.some(({ growth_g_week }) => growth_g_week.value >= 1)
    ? { unit: 'g dry a week', factor: 1 }
    : { unit: 'mg dry a week', factor: 1000 }

/** What grows on a place in the coming week. */
export const growthFigure = (place: PlaceReach, ground: ReachGround): ComputedFigure =>
  figure(
    `reach.grows.${keyOf(place)}`,
    `Growth of ${kindName(place.kind)} on ${placeName(place)}`,
    place.growth_g_week,
    ground,
    () => derived(ground, 'algal-growth', 'grows', standOf(place)),
  )

/** What of it nobody eats. */
export const leftFigure = (place: PlaceReach, ground: ReachGround): ComputedFigure =>
  figure(
    `reach.left.${keyOf(place)}`,
    `What nobody eats of ${kindName(place.kind)} on ${placeName(place)}`,
    place.left_g_week,
    ground,
    () => derived(ground, 'grazing', 'grows − what is eaten', standOf(place)),
  )

/** What is left on a patch of all that nobody wants there. */
export const exposedFigure = (place: Exposed, ground: ReachGround): ComputedFigure =>
  figure(
    `reach.exposed.${place.surface}.${place.patch}`,
    `What nobody eats on ${placeName(place)}`,
    place.left_g_week,
    ground,
    () =>
      derived(
        ground,
        'algal-growth',
        'what grows there of all unwanted kinds − what is eaten',
        standOf(place),
      ),
  )

/** What all animals of a taxon eat in the week. */
export const eatenFigure = (grazer: GrazerReach, ground: ReachGround): ComputedFigure =>
  figure(`reach.eats.${grazer.taxon}`, `What the ${grazer.tradeName} eat`, grazer.eaten_g_week, ground, () =>
    derived(ground, 'grazing', 'what it takes of all places together', grazer.taxon),
  )

/** Share of the appetite that finds algae, per cent. */
export const usedFigure = (grazer: GrazerReach, ground: ReachGround): ComputedFigure => ({
  id: `reach.used.${grazer.taxon}`,
  name: `Share of the appetite of the ${grazer.tradeName} that is used`,
  ...times(grazer.used, 100),
  unit: '%',
  derivation: () =>
    derived(
      ground,
      'grazing',
      'what it eats, each kind divided by its taste for it, of what the living ones would eat of what they like best',
      grazer.taxon,
    ),
})

function figure(
  id: string,
  name: string,
  grams: Band,
  ground: ReachGround,
  derivation: () => Derivation,
): ComputedFigure {
  const { unit, factor } = unitOf(ground)
  return { id, name, ...times(grams, factor), unit, derivation }
}

const times = ({ value, low, high }: Band, factor: number): Band => ({
  value: value * factor,
  low: low * factor,
  high: high * factor,
})

const keyOf = ({ surface, patch, kind }: PlaceReach): string => `${surface}.${patch}.${kind}`

/** As the instances of processes name a stand. */
const standOf = ({ surface, patch, kind }: Pick<PlaceReach, 'surface' | 'patch' | 'kind'>): string =>
  `${kind} on ${surface}, ${patch}`

function derived(
  { told: { reach, processes }, data }: ReachGround,
  process: string,
  formula: string,
  instance: string,
): Derivation {
  return {
    says: `${reach.worlds} simulated tanks, which your readings weigh, run through the coming week with husbandry as it is.`,
    steps: [
      {
        formula: `in each tank: ${formula}, summed over seven days`,
        withValues: 'figure = median of the tanks; brackets = their 5 % and 95 % points',
      },
    ],
    processes: processes.filter((one) => one.process.startsWith(process) && one.instance.includes(instance)),
    facts: [],
    entries: takenIn(data),
  }
}
