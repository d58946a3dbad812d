import type { Band } from '@holdfast/crew-plan'
import { named } from '@holdfast/facts/names'
import type { Covered, Exposed, GrazerReach, PlaceReach } from '@holdfast/reach'
import type { ComputedFigure, Derivation } from '../../figure/computed.ts'
import { takenIn } from '../../figure/entry-ids.ts'
import { plain } from '../../figure/numbers.ts'
import type { SystemData } from '../../shell/system-data.ts'
import type { ReachTold } from '../../worker/answers.ts'
import { several } from '../counted.ts'
import { kindName, patchName, placeName } from './words.ts'

export interface ReachGround {
  readonly told: ReachTold
  readonly data: SystemData
}

/** Grams or, where little grows anywhere, milligrams: the same for all figures of a page. */
const unitOf = ({ told: { reach } }: ReachGround) =>
  reach.places.some(({ growth_g_week }) => growth_g_week.value >= 1)
    ? ({ mass: 'g', factor: 1, least: 0.01 } as const)
    : ({ mass: 'mg', factor: 1000, least: 1 } as const)

/** Dry algae as they are put into a formula. */
function dry(grams: number, ground: ReachGround): string {
  const { mass, factor } = unitOf(ground)
  return `${plain(Number((grams * factor).toPrecision(2)))} ${mass}`
}

/** What grows on a place in the coming week. */
export const growthFigure = (place: PlaceReach, ground: ReachGround): ComputedFigure =>
  figure(
    `reach.grows.${keyOf(place)}`,
    `Growth of ${kindName(place.kind)} on ${placeName(place)}`,
    place.growth_g_week,
    ground,
    () => {
      const { value } = place.growth_g_week
      return derived(ground, ['algal-growth'], standOf(place), {
        formula: 'a week = 7 d × growth in a day, before anything is eaten',
        withValues: `${dry(value, ground)} = 7 d × ${dry(value / 7, ground)} d⁻¹`,
      })
    },
  )

/** What of it nobody eats. */
export const leftFigure = (place: PlaceReach, ground: ReachGround): ComputedFigure =>
  figure(
    `reach.left.${keyOf(place)}`,
    `What nobody eats of ${kindName(place.kind)} on ${placeName(place)}`,
    place.left_g_week,
    ground,
    () => {
      const { growth_g_week, eaten } = place
      const names = namesIn(ground)
      const mouths = eaten.map(({ taxon, g_week }) => `${names.get(taxon) ?? taxon} ${dry(g_week, ground)}`)
      return derived(ground, ['grazing'], standOf(place), {
        formula: 'left = grows − what is eaten, in each tank',
        withValues: `medians: grows ${dry(growth_g_week.value, ground)}; eaten by ${mouths.join(', ') || 'nobody'}`,
      })
    },
  )

/** What a kind covers of a surface today, per cent. */
export const coverFigure = ({ surface, kind, cover }: Covered, ground: ReachGround): ComputedFigure => ({
  id: `reach.cover.${surface}.${kind}`,
  name: `Cover of ${kindName(kind)} on ${named(surface)} today`,
  ...times(cover, 100),
  unit: '%',
  least: 1,
  derivation: () => {
    const parts = placesIn(ground, (one) => one.surface === surface && one.kind === kind).map(
      (one) =>
        `${patchName(one.patch)} ${plain(Number((100 * one.cover).toPrecision(2)))} % of ${plain(one.area_m2)} m²`,
    )
    return derived(ground, ['algal-', 'grazing', 'overgrowth'], `${kind} on ${surface}`, {
      formula: 'cover = cover of each part × its area, summed ÷ the area of the surface',
      withValues: `medians: ${parts.join(', ')}`,
    })
  },
})

/** What is left on a patch of all that nobody wants there. */
export const exposedFigure = (place: Exposed, ground: ReachGround): ComputedFigure =>
  figure(
    `reach.exposed.${place.surface}.${place.patch}`,
    `What nobody eats on ${placeName(place)}`,
    place.left_g_week,
    ground,
    () => {
      const kinds = placesIn(
        ground,
        (one) => one.surface === place.surface && one.patch === place.patch && !one.wanted,
      ).map((one) => `${kindName(one.kind)} ${dry(one.left_g_week.value, ground)}`)
      return derived(ground, ['algal-growth', 'grazing'], standOf(place), {
        formula: 'left = grows − what is eaten, in each tank, summed over all kinds that nobody wants there',
        withValues: `medians: ${kinds.join(', ')}`,
      })
    },
  )

/** What all animals of a taxon eat in the week. */
export const eatenFigure = (grazer: GrazerReach, ground: ReachGround): ComputedFigure =>
  figure(
    `reach.eats.${grazer.taxon}`,
    `What the ${several(grazer.tradeName)} eat`,
    grazer.eaten_g_week,
    ground,
    () => {
      const meals = placesIn(ground, () => true)
        .flatMap((place) =>
          place.eaten
            .filter(({ taxon }) => taxon === grazer.taxon)
            .map(({ g_week }) => ({ g_week, where: placeName(place) })),
        )
        .sort((a, b) => b.g_week - a.g_week)
        .slice(0, mostMeals)
      return derived(ground, ['grazing'], grazer.taxon, {
        formula: 'a week = what it takes of all places, summed',
        withValues: `medians, most first: ${meals.map(({ g_week, where }) => `${where} ${dry(g_week, ground)}`).join(', ') || 'nothing'}`,
      })
    },
  )

/** So many places at which an animal eats are told. */
const mostMeals = 4

/** Share of the appetite that finds algae, per cent. */
export const usedFigure = (grazer: GrazerReach, ground: ReachGround): ComputedFigure => ({
  id: `reach.used.${grazer.taxon}`,
  name: `Share of the appetite of the ${several(grazer.tradeName)} that is used`,
  ...times(grazer.used, 100),
  unit: '%',
  least: 1,
  derivation: () =>
    derived(ground, ['grazing'], grazer.taxon, {
      formula: 'used = what it eats, each kind ÷ its taste for it, ÷ (living × appetite of one)',
      withValues: `${dry(grazer.eaten_g_week.value, ground)} a week, ${plain(Math.round(grazer.living))} living`,
    }),
})

function figure(
  id: string,
  name: string,
  grams: Band,
  ground: ReachGround,
  derivation: () => Derivation,
): ComputedFigure {
  const { mass, factor, least } = unitOf(ground)
  return { id, name, ...times(grams, factor), unit: `${mass} dry a week`, least, derivation }
}

const times = ({ value, low, high }: Band, factor: number): Band => ({
  value: value * factor,
  low: low * factor,
  high: high * factor,
})

const namesIn = ({ told: { reach } }: ReachGround): ReadonlyMap<string, string> =>
  new Map(reach.grazers.map(({ taxon, tradeName }) => [taxon, tradeName]))

const placesIn = (
  { told: { reach } }: ReachGround,
  isMeant: (place: PlaceReach) => boolean,
): readonly PlaceReach[] => reach.places.filter(isMeant)

const keyOf = ({ surface, patch, kind }: PlaceReach): string => `${surface}.${patch}.${kind}`

/** As the instances of processes name a stand. */
const standOf = ({ surface, patch, kind }: Pick<PlaceReach, 'surface' | 'patch' | 'kind'>): string =>
  `${kind} on ${surface}, ${patch}`

function derived(
  { told: { reach, processes }, data }: ReachGround,
  from: readonly string[],
  instance: string,
  step: Derivation['steps'][number],
): Derivation {
  return {
    says: `${reach.worlds} simulated tanks, which your readings weigh, run through the coming week with husbandry as it is; the figure is their median.`,
    steps: [step],
    processes: processes.filter(
      (one) => from.some((each) => one.process.startsWith(each)) && one.instance.includes(instance),
    ),
    facts: [],
    entries: takenIn(data),
  }
}
