import type { RockKind } from '@holdfast/ecosystem'
import { pieceOf, type Standing } from '../standing.ts'
import type { Found } from './found.ts'
import { amount, percent } from './found.ts'
import { highOnes } from './inputs.ts'

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

/** Rock that leaks more than comes in from elsewhere, or that alone can be what the water is loaded with. */
export function curing(standing: Standing): Found | undefined {
  const { books, hasAnimals, cycleOpen, facts } = standing
  const kinds = leakingKinds(standing)
  if (kinds.length === 0) return undefined
  const seen = Math.max(...Object.values(books).map(({ fromRock, total }) => fromRock / total || 0))
  const fed = Object.values(books).some(({ inputs }) => (inputs.get('feed') ?? 0) > 0)
  const nothingElse = !fed && (cycleOpen || highOnes(standing).length > 0)
  if (!nothingElse && seen < facts.typical('ladder.share')) return undefined
  const size = nothingElse ? 1 : seen
  return {
    key: 'curing',
    rank: size > 0.5 && !hasAnimals ? 'unfinished' : 'load',
    size,
    says: `The rock (${kinds.join(', ')}) is not cured: ${nothingElse ? 'nothing is fed, so what can be read in the water' : `${percent(size)} of what reaches the water`} leaks from it, and a water change is undone within days.`,
    steps: [
      'cure_rock_dark',
      hasAnimals ? 'water_change_small' : 'water_change_large',
      ...(skimmerIsOff(standing) ? ['skimmer_on'] : []),
      'ferric_media_small_repeated',
      'lights_on',
    ],
  }
}

/** Of the rock that is described or was added of late. */
function leakingKinds({ system, question, day }: Standing): readonly string[] {
  const added = question.events.flatMap((event) =>
    event.kind === 'rock added' && event.day <= day && event.day > day - curedAfter ? [event.rock] : [],
  )
  const uncured = [...system.rock.filter(({ mass_kg }) => mass_kg > 0), ...added].filter(
    ({ kind, cured_days, age_days }) => leaking.includes(kind) && (cured_days ?? age_days) < curedAfter,
  )
  return [...new Set(uncured.map(({ kind }) => kind))]
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
