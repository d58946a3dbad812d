import { percent } from './causes/found.ts'
import { highOnes } from './causes/inputs.ts'
import { curing } from './causes/new-system.ts'
import { darkBed } from './causes/outlets.ts'
import { rationOf } from './causes/ration.ts'
import { salinity } from './causes/too-fast.ts'
import { poured } from './poured.ts'
import { pieceOf, type Standing } from './standing.ts'

/** When measures would do harm, or have nothing to act on. */
interface Refusal {
  readonly of: readonly string[]
  /** A sentence for the keeper, or undefined where nothing speaks against it. */
  readonly because: (standing: Standing) => string | undefined
}

const refusals: readonly Refusal[] = [
  {
    of: [
      'feed_less',
      'nutrients_lower',
      'carbon_dose_more',
      'refugium_harvest_more',
      'scrubber_harvest_more',
    ],
    because: ({ levels }) =>
      levels.nitrate.isShort || levels.phosphate.isShort
        ? `${levels.phosphate.isShort ? 'Phosphate' : 'Nitrate'} reads nothing: what takes more of it out starves corals, and bacteria cannot grow without it.`
        : undefined,
  },
  {
    of: ['feed_less', 'nutrients_lower', 'water_change_small', 'carbon_dose_more'],
    because: (standing) =>
      highOnes(standing).length === 0 && !salinity(standing)
        ? 'Neither nitrate nor phosphate stands above the band: leaner water harms corals before it harms algae.'
        : undefined,
  },
  {
    of: ['feed_less'],
    because: (standing) => {
      const ration = rationOf(standing)
      const least = standing.facts.typical('ladder.ration')
      return ration !== undefined && ration <= least
        ? `The fish get ${percent(ration)} of their mass a day, dry: less would starve them.`
        : undefined
    },
  },
  {
    of: ['feed_more'],
    because: (standing) =>
      highOnes(standing).length > 0
        ? `It raises both, and ${highOnes(standing)[0]} already stands above the band.`
        : undefined,
  },
  {
    of: ['ferric_media_small_repeated', 'ferric_media_more', 'ferric_media_new'],
    because: ({ levels }) =>
      levels.phosphate.isHigh
        ? undefined
        : 'Phosphate does not stand above the band: less of it harms corals and favours slime.',
  },
  {
    of: ['ferric_media_new', 'ferric_media_more'],
    because: ({ system }) =>
      system.corals
        ? 'A full portion at once lets phosphate fall faster than corals bear: small portions instead.'
        : undefined,
  },
  {
    of: ['ferric_media_less'],
    because: ({ medium }) => (medium ? undefined : 'No phosphate medium is in place.'),
  },
  {
    of: ['carbon_dose_less', 'carbon_dose_stop', 'carbon_dose_more'],
    because: (standing) =>
      pieceOf(standing, 'organic carbon dosing') ? undefined : 'No organic carbon is dosed.',
  },
  {
    of: ['nitrate_dose_small', 'phosphate_dose_small', 'nutrients_raise'],
    because: ({ levels }) =>
      levels.nitrate.isShort || levels.phosphate.isShort
        ? undefined
        : 'Nitrate and phosphate can be read: there is nothing to raise.',
  },
  {
    of: ['nutrients_raise'],
    because: ({ levels }) =>
      levels.nitrate.isHigh || levels.phosphate.isHigh
        ? 'One of the two stands above the band: raise only the other.'
        : undefined,
  },
  { of: ['nitrate_dose_small'], because: ({ levels }) => notShort(levels.nitrate, 'Nitrate') },
  { of: ['phosphate_dose_small'], because: ({ levels }) => notShort(levels.phosphate, 'Phosphate') },
  {
    of: ['water_change_small', 'water_change_large', 'nutrients_lower'],
    because: (standing) => poured(standing),
  },
  {
    of: ['lights_on'],
    because: (standing) => {
      if (standing.cycleOpen) return 'Ammonia or nitrite can still be read.'
      if (curing(standing)) return 'The rock still leaks: light on it grows algae first.'
      return highOnes(standing).length > 0
        ? `The water is loaded (${highOnes(standing).join(', ')}): light grows algae first.`
        : undefined
    },
  },
  {
    of: ['crew_add', 'place_grazer_inside'],
    because: ({ cycleOpen, poison, facts }) =>
      cycleOpen || poison > facts.typical('crew_plan.ammonia')
        ? 'Ammonia or nitrite can be read: no animal comes before both read nothing for seven days.'
        : undefined,
  },
  {
    of: ['crew_add'],
    because: ({ hungry }) =>
      hungry.length > 0 ? `Those that are there find too little: ${hungry.join(', ')}.` : undefined,
  },
  {
    of: ['crew_add'],
    because: (standing) => {
      const growths = standing.growths.filter(({ kind }) => kind === standing.meant?.kind)
      return growths.length > 0 && growths.every(({ unreached }) => unreached)
        ? 'It grows where no animal outside gets to: more of them would starve.'
        : undefined
    },
  },
  {
    of: ['refugium_harvest_more'],
    because: (standing) => {
      if (!pieceOf(standing, 'refugium')) return 'There is no refugium to cut.'
      return darkBed(standing) ? 'The bed has no light: there is nothing new to cut.' : undefined
    },
  },
  {
    of: ['scrubber_harvest_more'],
    because: (standing) => (pieceOf(standing, 'turf scrubber') ? undefined : 'There is no screen to scrape.'),
  },
  {
    of: ['peroxide_dip', 'rock_moved_to_grazers', 'cure_rock_dark'],
    because: (standing) => {
      const growths = standing.growths.filter(({ kind }) => kind === standing.meant?.kind)
      return !curing(standing) &&
        growths.length > 0 &&
        !growths.some(({ surface }) => /^(rock|frag)/.test(surface.kind))
        ? 'It does not grow on rock that can be lifted out.'
        : undefined
    },
  },
  {
    of: ['light_hours_less', 'blackout', 'shade_surface'],
    because: ({ system, growths }) =>
      (growths.length > 0 ? growths.map(({ surface }) => surface) : system.surfaces).every(
        ({ light_h_per_day, light_umol_m2_s }) => light_h_per_day * light_umol_m2_s === 0,
      )
        ? 'It is dark there already.'
        : undefined,
  },
  {
    of: ['source_water_purify', 'topoff_pure_water'],
    because: (standing) => {
      const { kind, NO3_mg_L = 0, PO4_mg_L = 0, SiO2_mg_L = 0 } = standing.system.source_water
      return !salinity(standing) && kind !== 'tap water' && NO3_mg_L + PO4_mg_L + SiO2_mg_L === 0
        ? 'By its description the new water carries nothing.'
        : undefined
    },
  },
]

const notShort = ({ isShort }: { readonly isShort: boolean }, name: string): string | undefined =>
  isShort ? undefined : `${name} can be read: there is nothing to raise.`

/** Why a measure is not offered here; undefined where it is. */
export function refusal(measure: string, standing: Standing): string | undefined {
  for (const { of, because } of refusals) {
    const why = of.includes(measure) ? because(standing) : undefined
    if (why !== undefined) return why
  }
  return undefined
}
