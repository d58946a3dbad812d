import { type Grazer, type GrazerGroup, grazers, mortalityId, type Stocking, taste } from '@holdfast/facts'
import type { Animals, System } from '../system.ts'
import { chance } from './chance.ts'

/**
 * Kinds of mouth that share room: how many taxa of each are drawn, and how much room there is, as sum over
 * the taxa of number by limit. Keepers have twice as many snails as the limit of each kind alone.
 */
const shelves: readonly {
  readonly groups: readonly GrazerGroup[]
  readonly taxa: number
  readonly room: number
}[] = [
  { groups: ['snail'], taxa: 3, room: 2 },
  { groups: ['hermit_crab'], taxa: 1, room: 1 },
  { groups: ['conch'], taxa: 1, room: 1 },
  { groups: ['urchin'], taxa: 1, room: 1 },
  { groups: ['blenny'], taxa: 1, room: 1 },
]

/** Fish that swim share the water: comfortable volumes together are at most this times the vessel. */
const swimmersPerVolume = 1.25
/** Least taste for a kind of algae by which an animal counts as a remedy for it. */
const remedy = 0.45

/** As many as the table of stocking says at its dense end. */
const limit = ({ per100L, perSand_m2, perTank = 0 }: Stocking, volume_L: number, sand_m2: number): number => {
  if (per100L) return (per100L.high * volume_L) / 100
  return perSand_m2 ? perSand_m2.high * sand_m2 : perTank
}

/**
 * A crew for an alga as keepers stock it (common practice): taxa drawn among those that are safe in a reef, live
 * in the warmth and the volume of the vessel and eat that alga, as many as their table of stocking says.
 */
export function fittingCrew(system: System, alga: string, number: number): readonly Animals[] {
  const draw = chance(number * 15485863 + 7)
  const [{ volume_L }] = system.vessels
  const sand_m2 = system.surfaces
    .filter(({ kind }) => kind === 'sand')
    .reduce((sum, { area_m2 }) => sum + area_m2, 0)
  const fits = ({ taxon, reefSafe, volume_L: needs, temperature_C }: Grazer): boolean =>
    reefSafe !== 'no' &&
    needs.least <= volume_L &&
    temperature_C.max > system.temperature_C + 1 &&
    taste(taxon, alga).preference >= remedy
  const drawn = (groups: readonly GrazerGroup[]): readonly Grazer[] =>
    grazers()
      .filter((one) => groups.includes(one.group) && fits(one))
      .map((one) => ({ one, at: draw() }))
      .sort((a, b) => a.at - b.at)
      .map(({ one }) => one)
  const settled = shelves.flatMap(({ groups, taxa, room }) =>
    drawn(groups)
      .slice(0, taxa)
      .map((one) => ({ one, count: Math.round((limit(one.stocking, volume_L, sand_m2) * room) / taxa) })),
  )
  let left = swimmersPerVolume * volume_L
  const swimmers = drawn(['tang', 'rabbitfish']).flatMap((one) => {
    if (one.volume_L.comfortable > left) return []
    left -= one.volume_L.comfortable
    return [{ one, count: 1 }]
  })
  return [...settled, ...swimmers]
    .filter(({ count }) => count > 0)
    .map(({ one, count }) => ({ kind: one.tradeName, taxon: one.taxon, count, role: 'grazer' }))
}

/** Facts of a crew that is kept at its number: whoever dies is replaced the same day. */
export const keptAtNumber = (crew: readonly Animals[]): Readonly<Record<string, number>> => ({
  'crew.starvation': 0,
  ...Object.fromEntries(crew.map(({ taxon = '' }) => [mortalityId(taxon), 0])),
})
