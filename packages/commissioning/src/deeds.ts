import type { Commissioning, Condition, ConditionName, Deed, Nutrient } from './answer.ts'

/** What a start-up is told to use, out of the facts and the description. */
export interface Portions {
  /** mg/L N that a dose adds which tries the bacteria, and the ammonium chloride that is, g. */
  readonly rise: number
  readonly mass_g: number
  /** Share of the water in a large change. */
  readonly change: number
  /** Ferric media for all the water, g. */
  readonly media_g: number
}

type Stood = Pick<Commissioning, 'conditions' | 'readyNow' | 'stocked'> & {
  /** Corals live in it: they need their light. */
  readonly hasCorals: boolean
}

/**
 * What to do next, in order, and what not to do, by what is shown already: first what animals that are in need, then
 * tests, then what brings the next condition about. The days of `ready` suppose the same deeds in the same order.
 */
export function deedsOf(stood: Stood, portions: Portions): Pick<Commissioning, 'next' | 'not'> {
  return stood.readyNow
    ? {
        next: [{ name: 'change first', share: portions.change }, { name: 'first few' }, { name: 'look' }],
        not: [],
      }
    : { next: next(stood, portions), not: not(stood) }
}

function next({ conditions, stocked }: Stood, portions: Portions): readonly Deed[] {
  const at = (name: ConditionName): Condition | undefined => conditions.find((one) => one.name === name)
  const isOpen = (name: ConditionName): boolean => at(name)?.state === 'open'
  const ammonia = at('ammonia_reads_nothing')
  const isGone = readsNothing(ammonia)
  const unread = tested.flatMap(([quantity, name]) => (isRead(at(name)) ? [] : [quantity]))
  const changing = (['ammonia', 'nitrite'] as const).filter(
    (quantity) => !unread.includes(quantity) && isOpen(nameOf[quantity]),
  )
  const proves = isOpen('ammonia_challenge_cleared') && isGone && !isOpen('rock_cured')
  const left = ['nitrate_under_limit', 'phosphate_under_limit'] as const
  return [
    ...(stocked && isRead(ammonia) && !isGone ? [{ name: 'spare animals' } as const] : []),
    ...(unread.length > 0 ? [{ name: 'test', quantities: unread } as const] : []),
    ...(changing.length > 0 ? [{ name: 'test often', quantities: changing } as const] : []),
    ...(isOpen('rock_cured') && isGone
      ? [{ name: 'cure', share: portions.change, media_g: portions.media_g } as const]
      : []),
    ...(proves ? [{ name: 'dose', mass_g: portions.mass_g, rise: portions.rise } as const] : []),
    ...(left.some(isOpen) && isGone && !isOpen('nitrite_near_nothing') && !isOpen('rock_cured') && !proves
      ? [{ name: 'change', share: portions.change } as const]
      : []),
  ]
}

function not({ conditions, stocked, hasCorals }: Stood): Commissioning['not'] {
  const leaches = conditions.some(({ name }) => name === 'rock_cured')
  return [
    stocked ? 'dose over animals' : 'animals',
    ...(stocked || hasCorals ? [] : (['light'] as const)),
    ...(leaches ? (['acid or bleach'] as const) : []),
  ]
}

const nameOf: Readonly<Record<Nutrient | 'phosphate', ConditionName>> = {
  ammonia: 'ammonia_reads_nothing',
  nitrite: 'nitrite_near_nothing',
  nitrate: 'nitrate_under_limit',
  phosphate: 'phosphate_under_limit',
}

const tested = Object.entries(nameOf) as readonly (readonly [Nutrient | 'phosphate', ConditionName])[]

/** What the model makes of a quantity that nobody read does not count as read. */
const isRead = (condition: Condition | undefined): boolean => condition?.shown?.by === 'reading'

/** The last reading of ammonia is nothing, though perhaps not for long enough. */
const readsNothing = (condition: Condition | undefined): boolean =>
  condition?.shown !== undefined &&
  (condition.shown.belowDetection === true || condition.shown.value <= condition.limits[0].value)
