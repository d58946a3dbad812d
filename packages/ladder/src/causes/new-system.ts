import type { RockKind } from '@holdfast/ecosystem'
import { pieceOf, type Standing } from '../standing.ts'
import type { Found } from './found.ts'
import { amount, percent } from './found.ts'

/** Rock that still holds what died on it. */
const leaking: readonly RockKind[] = ['dried ex-ocean', 'uncured live']
/** Rock that lay in the water for longer has given off most of it, d. */
const curedAfter = 180

/** Ammonia at which animals suffer. */
export function poison({ poison, hasAnimals, facts }: Standing): Found | undefined {
  const limit = facts.typical('crew_plan.ammonia')
  if (!hasAnimals || poison <= limit) return undefined
  return {
    key: 'poison',
    rank: 'danger',
    size: 1,
    says: `Ammonia poisons the animals: its poisonous part stands at ${amount(poison)} as nitrogen, and ${amount(limit)} is the most they should meet.`,
    steps: ['water_change_large', 'remove_dead', 'activated_carbon_new'],
  }
}

/** Rock that leaks more than comes in from elsewhere. */
export function curing(standing: Standing): Found | undefined {
  const { system, books, hasAnimals, facts } = standing
  const fresh = system.rock.filter(
    ({ kind, cured_days, age_days }) => leaking.includes(kind) && (cured_days ?? age_days) < curedAfter,
  )
  if (fresh.length === 0) return undefined
  const size = Math.max(...Object.values(books).map(({ fromRock, total }) => fromRock / total || 0))
  if (size < facts.typical('ladder.share')) return undefined
  const off = skimmerIsOff(standing) ? ['skimmer_on'] : []
  return {
    key: 'curing',
    rank: size > 0.5 || !hasAnimals ? 'unfinished' : 'load',
    size,
    says: `The rock (${fresh.map(({ kind }) => kind).join(', ')}) is not cured: ${percent(size)} of what reaches the water leaks from it, so a water change is undone within days.`,
    steps: ['cure_rock_dark', 'water_change_large', ...off, 'ferric_media_small_repeated', 'lights_on'],
  }
}

/** Bacteria that have not yet caught up with the ammonia. */
export function cycling({ cycleOpen, hasAnimals }: Standing): Found | undefined {
  if (!cycleOpen || hasAnimals) return undefined
  return {
    key: 'cycling',
    rank: 'unfinished',
    size: 0,
    says: 'The cycle is not finished: ammonia or nitrite can still be read, so it stays dark and no animal comes yet.',
    steps: [{ measure: 'wait', days: { low: 7, high: 28 } }, 'water_change_large', 'lights_on'],
  }
}

/** A skimmer that the system has and that does not run on the day. */
export function skimmerIsOff(standing: Standing): boolean {
  const off = pieceOf(standing, 'skimmer')?.off ?? []
  return off.some(([from, to]) => from <= standing.day && standing.day - 1 <= to)
}
