import type { Equipment, MechanicalFilter } from '@holdfast/ecosystem'
import { finned } from '@holdfast/facts'
import { pieceOf, type Standing } from '../standing.ts'
import { amount, type Found, percent } from './found.ts'
import { highOnes, shareOf } from './inputs.ts'
import { skimmerIsOff } from './new-system.ts'

/** Media that were put in for phosphate and take next to none any more. */
export function spentMedium(standing: Standing): Found | undefined {
  const { medium, levels, facts, books } = standing
  if (!medium || !levels.phosphate.isHigh || medium.left >= facts.typical('ladder.spent')) return undefined
  return {
    key: 'spent-medium',
    rank: 'fault',
    size: Math.min(1, medium.held_mg / medium.days / books.phosphate.total),
    says: `The phosphate medium is spent: it takes ${percent(Math.max(0, medium.left))} of what fresh medium would; phosphate stands at ${amount(levels.phosphate.value)}, over ${amount(levels.phosphate.high)}.`,
    steps: ['ferric_media_small_repeated', 'ferric_media_new'],
  }
}

/** A bed of algae whose lamp is dark: what took up gives back. */
export function darkBed(standing: Standing): Found | undefined {
  const bed = pieceOf(standing, 'refugium')
  if (!bed) return undefined
  const since = bed.light_off_since
  if (bed.light_h_per_day !== 0 && (since === undefined || since > standing.day)) return undefined
  return {
    key: 'dark-bed',
    rank: 'fault',
    size: Math.max(
      0.5,
      shareOf(standing, ({ fromBed }) => fromBed, ['nitrate', 'phosphate']),
    ),
    says: `The bed of the refugium has no light${since === undefined ? '' : ` for ${Math.round(standing.day - since)} days`}: it takes up nothing, and what rots of it goes back into the water.`,
    steps: ['refugium_remove_dead', 'refugium_light_restore', 'water_change_small'],
  }
}

/** A screen of turf without light. */
export function darkScreen(standing: Standing): Found | undefined {
  const screen = pieceOf(standing, 'turf scrubber')
  if (!screen || (screen.light_h_per_day !== 0 && screen.light_umol_m2_s !== 0)) return undefined
  return {
    key: 'dark-bed',
    rank: 'fault',
    size: 0.5,
    says: 'The screen of the scrubber has no light: it takes up nothing.',
    steps: ['refugium_light_restore'],
  }
}

/** A lit bed that is not cut: it takes up less and less, and nothing leaves with it. */
export function uncutBed(standing: Standing): Found | undefined {
  const bed = pieceOf(standing, 'refugium')
  const { day, question, facts } = standing
  const every = bed?.harvest_every_days
  if (!bed || every === undefined || darkBed(standing) || highOnes(standing).length === 0) return undefined
  const days = day - (bed.last_harvest ?? question.from)
  if (days <= facts.typical('ladder.harvest_overdue') * every) return undefined
  return {
    key: 'uncut-bed',
    rank: 'fault',
    size: facts.typical('ladder.share'),
    says: `The bed of the refugium was not cut for ${Math.round(days)} days, though every ${every} days was meant: it grows no more and takes up less.`,
    steps: ['refugium_harvest_more'],
  }
}

/** A skimmer that stands still. */
export function skimmerOff(standing: Standing): Found | undefined {
  if (!skimmerIsOff(standing) || highOnes(standing).length === 0) return undefined
  return {
    key: 'skimmer-off',
    rank: 'fault',
    size: standing.facts.typical('ladder.foam'),
    says: 'The skimmer is off: waste that foam would take out rots in the tank.',
    steps: ['skimmer_on'],
  }
}

/** Floss or socks in which dirt rots before they are changed. */
export function oldFilter(standing: Standing): Found | undefined {
  const filter = standing.equipment.find(isFilter)
  const size = shareOf(standing, ({ fromFilters }) => fromFilters)
  const { facts } = standing
  const most = facts.fact('ladder.filter_change').high
  const every = filter?.changed_every_days
  if (!filter || (every ?? Number.POSITIVE_INFINITY) <= most || size < facts.typical('ladder.share'))
    return undefined
  return {
    key: 'old-filter',
    rank: 'fault',
    size,
    says: `The ${filter.kind} is ${every === undefined ? 'not changed' : `changed every ${every} days`}: what it holds rots, and ${percent(size)} of what comes in goes back into the water.`,
    steps: ['mechanical_filter_interval_shorter'],
  }
}

const isFilter = (item: Equipment): item is MechanicalFilter =>
  item.kind === 'filter sock' || item.kind === 'filter floss'

/** Days in which a body rots in the water. */
const rots = 14

/** Animals that died of late and of which the log does not say that they were taken out. */
export function bodies({ question, day, books, facts, system }: Standing): Found | undefined {
  const lost = question.events
    .filter((event) => event.kind === 'animals lost')
    .filter((event) => event.day <= day && event.day > day - rots && event.bodyTakenOut !== true)
  const nitrogen_mg = lost.reduce((sum, { taxon, count, mass_g }) => {
    const animal = facts.grazer(taxon)
    const each = mass_g ?? system.animals.find((one) => one.taxon === taxon || one.kind === taxon)?.mass_g
    const shelled = animal !== undefined && !finned(animal.group)
    const perGram = facts.typical(shelled ? 'crew.body_n.shelled' : 'fish.body_n')
    return sum + 1000 * perGram * count * (each ?? animal?.wetMass_g ?? 0)
  }, 0)
  const size = nitrogen_mg / rots / books.nitrate.total || 0
  if (size < facts.typical('ladder.share')) return undefined
  return {
    key: 'bodies',
    rank: 'fault',
    size,
    says: `Animals that died were not taken out, as far as the log says: in ${rots} days they give off ${size > 1 ? 'more than all that' : `${percent(size)} of what`} comes in.`,
    steps: ['remove_dead', 'activated_carbon_new', 'water_change_small'],
  }
}

/** Old rock that gives back the phosphate it bound. */
export function loadedRock(standing: Standing): Found | undefined {
  if (!standing.levels.phosphate.isHigh) return undefined
  const size = shareOf(standing, ({ fromRock }) => fromRock, ['phosphate'])
  if (size < standing.facts.typical('ladder.share')) return undefined
  return {
    key: 'loaded-rock',
    rank: 'load',
    size,
    says: `Rock and sand give back phosphate that they bound before: ${percent(size)} of what reaches the water.`,
    steps: ['ferric_media_small_repeated', 'siphon_detritus'],
  }
}
