import type { Equipment, Source } from '@holdfast/ecosystem'
import type { CauseKey } from '../answer.ts'
import type { Standing } from '../standing.ts'
import type { Nutrient } from '../water-today.ts'
import { amount, type Found, percent } from './found.ts'
import { rationOf, rationRise } from './ration.ts'

/** Nutrients that stand above the band. */
export const highOnes = ({ levels }: Standing): readonly Nutrient[] =>
  (['nitrate', 'phosphate'] as const).filter((of) => levels[of].isHigh)

/** The largest share, among what stands too high, of an amount of all that comes in. */
export function shareOf(
  standing: Standing,
  part: (books: Standing['books'][Nutrient]) => number,
  among = highOnes(standing),
): number {
  return Math.max(0, ...among.map((of) => part(standing.books[of]) / standing.books[of].total || 0))
}

const inputShare = (standing: Standing, source: Source): number =>
  shareOf(standing, ({ inputs }) => inputs.get(source) ?? 0)

const standsAt = ({ levels }: Standing, of: readonly Nutrient[]): string =>
  of
    .map((one) => `${one} stands at ${amount(levels[one].value)}, over ${amount(levels[one].high)}`)
    .join(' and ')

/** New water, salt or a dose that carries in what there is too much of. */
export function carriedIn(source: 'source_water' | 'salt' | 'dose') {
  return (standing: Standing): Found | undefined => {
    const size = inputShare(standing, source)
    if (size < standing.facts.typical('ladder.share')) return undefined
    const { key, brings, steps } = carriers[source]
    return {
      key,
      rank: 'fault',
      size,
      says: `${brings} ${percent(size)} of what comes in; ${standsAt(standing, highOnes(standing))}.`,
      steps,
    }
  }
}

const carriers: Readonly<
  Record<
    'source_water' | 'salt' | 'dose',
    { readonly key: CauseKey; readonly brings: string; readonly steps: readonly string[] }
  >
> = {
  source_water: {
    key: 'source-water',
    brings: 'The water for changes and top-off brings',
    steps: ['source_water_purify', 'topoff_pure_water', 'water_change_small', 'water_change_large'],
  },
  salt: { key: 'salt', brings: 'The salt brings', steps: ['salt_mix_other'] },
  dose: { key: 'dose', brings: 'What is dosed brings', steps: ['dosing_stop'] },
}

/** New water that brings the silicate that a film of diatoms lives on. */
export function silicate({ system, facts, meant, growths }: Standing): Found | undefined {
  const brought = system.source_water.SiO2_mg_L ?? 0
  const isDiatom = meant?.kind === 'film_diatom' || growths.some(({ kind }) => kind === 'film_diatom')
  if (!isDiatom || brought < facts.typical('ladder.silicate')) return undefined
  return {
    key: 'source-water',
    rank: 'fault',
    size: 0,
    says: `The water for changes and top-off brings ${amount(brought)} of silicate, which diatoms build their shells of.`,
    steps: ['source_water_purify', 'topoff_pure_water'],
  }
}

/** Feed above what the fish live on, or more of it than there was. */
export function overfed(standing: Standing): Found | undefined {
  const fed = inputShare(standing, 'feed')
  const ration = rationOf(standing)
  const most = standing.facts.fact('ladder.ration').high
  const above = ration === undefined ? 0 : Math.max(0, 1 - most / ration)
  const risen = rationRise(standing)
  const size = fed * Math.max(above, risen)
  if (size < standing.facts.typical('ladder.share')) return undefined
  const why =
    risen > above
      ? `the ration has gone up by ${percent(risen / (1 - risen))}`
      : `they get ${percent(ration ?? 0)} of their mass a day, dry, and live on ${percent(most)} at most`
  return {
    key: 'overfed',
    rank: 'fault',
    size,
    says: `More is fed than the animals need: ${why}; ${standsAt(standing, highOnes(standing))}.`,
    steps: feeding(standing),
  }
}

/** Feed as it is: what is left where nothing is broken and the water is loaded all the same. */
export function feed(standing: Standing): Found | undefined {
  const size = inputShare(standing, 'feed')
  if (size === 0) return undefined
  return {
    key: 'feed',
    rank: 'load',
    size,
    says: `Feed brings ${percent(size)} of what comes in; ${standsAt(standing, highOnes(standing))}.`,
    steps: feeding(standing),
  }
}

function feeding(standing: Standing): readonly string[] {
  const high = highOnes(standing)
  const has = (kind: Equipment['kind']): boolean => standing.equipment.some((item) => item.kind === kind)
  return [
    'feed_less',
    'siphon_detritus',
    ...(has('filter floss') || has('filter sock') ? ['mechanical_filter_interval_shorter'] : []),
    'water_change_small',
    ...(has('refugium') ? ['refugium_harvest_more'] : []),
    ...(has('turf scrubber') ? ['scrubber_harvest_more'] : []),
    ...(high.includes('phosphate') ? ['ferric_media_small_repeated'] : []),
    ...(high.includes('nitrate') && has('organic carbon dosing') ? ['carbon_dose_more'] : []),
  ]
}
