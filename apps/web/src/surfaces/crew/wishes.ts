import type { Wishes } from '@holdfast/crew-plan'
import { type OwnAnimal, withOwnAnimals } from '@holdfast/facts'

/** What the keeper ticked, as it stands in the address: it can be shared and outlives a reload. */
export interface Ticked {
  readonly liked: readonly string[]
  readonly never: readonly string[]
  /** Nobody but those that are liked. */
  readonly onlyLiked: boolean
  readonly withCaution: boolean
  readonly keepAll: boolean
  readonly vessel: string
  /** As typed; empty for no limit. */
  readonly budget: string
  readonly byHand: string
}

type Text = Readonly<
  Record<'like' | 'never' | 'only' | 'caution' | 'keep' | 'vessel' | 'budget' | 'hand', string | undefined>
>

export function tickedIn(read: (name: keyof Text) => string | null, own: readonly OwnAnimal[] = []): Ticked {
  const known = new Set(
    withOwnAnimals(own)
      .grazers()
      .map(({ taxon }) => taxon),
  )
  const list = (name: 'like' | 'never') => (read(name) ?? '').split(',').filter((taxon) => known.has(taxon))
  return {
    liked: list('like'),
    never: list('never'),
    onlyLiked: read('only') === 'yes',
    withCaution: read('caution') === 'yes',
    keepAll: read('keep') === 'yes',
    vessel: read('vessel') ?? '',
    budget: read('budget') ?? '',
    byHand: read('hand') ?? '',
  }
}

export const textOf = ({
  liked,
  never,
  onlyLiked,
  withCaution,
  keepAll,
  vessel,
  budget,
  byHand,
}: Ticked): Text => ({
  like: orNothing(liked.join(',')),
  never: orNothing(never.join(',')),
  only: onlyLiked ? 'yes' : undefined,
  caution: withCaution ? 'yes' : undefined,
  keep: keepAll ? 'yes' : undefined,
  vessel: orNothing(vessel),
  budget: orNothing(budget),
  hand: orNothing(byHand),
})

/** Ticks one animal in one list, and takes it out of the other; a second time it is ticked off. */
export function tick(ticked: Ticked, list: 'liked' | 'never', taxon: string): Ticked {
  const other = list === 'liked' ? 'never' : 'liked'
  const without = (name: typeof list) => ticked[name].filter((one) => one !== taxon)
  return {
    ...ticked,
    [other]: without(other),
    [list]: ticked[list].includes(taxon) ? without(list) : [...ticked[list], taxon],
  }
}

/** The same with an animal refused, whatever was ticked of it. */
export const refused = (ticked: Ticked, taxon: string): Ticked =>
  ticked.never.includes(taxon) ? ticked : tick(ticked, 'never', taxon)

/** The wishes, or what is wrong with a limit that was typed. */
export function wishesOf(ticked: Ticked): { readonly wishes: Wishes } | { readonly issue: string } {
  const budget = limit('The budget', 'US dollars', ticked.budget)
  const hand = limit('What is left to your hand', 'grams a week', ticked.byHand)
  if (typeof budget === 'string') return { issue: budget }
  if (typeof hand === 'string') return { issue: hand }
  return {
    wishes: {
      ...(ticked.liked.length > 0 ? { liked: ticked.liked } : {}),
      ...(ticked.onlyLiked ? { only: ticked.liked } : {}),
      ...(ticked.never.length > 0 ? { never: ticked.never } : {}),
      ...(ticked.withCaution ? { withCaution: 'all' as const } : {}),
      ...(ticked.keepAll ? { keep: 'all' as const } : {}),
      ...(ticked.vessel ? { vessel: ticked.vessel } : {}),
      ...(budget === undefined ? {} : { budget_usd: budget }),
      ...(hand === undefined ? {} : { byHandMost_g_week: hand }),
    },
  }
}

function limit(field: string, unit: string, text: string): number | string | undefined {
  if (text.trim() === '') return undefined
  const value = Number(text.trim().replace(',', '.'))
  return Number.isFinite(value) && value >= 0
    ? value
    : `${field}: “${text}” is no number of ${unit}. Type 0 or more, or leave it empty for no limit.`
}

const orNothing = (text: string): string | undefined => (text === '' ? undefined : text)
