import type { Event, Feed } from '@holdfast/ecosystem'
import { type FactsOfSystem, feedKind } from '@holdfast/facts'
import type { Standing } from '../standing.ts'

/** Dry feed a day as a share of the live mass of the fish; undefined where no fish has a mass. */
export function rationOf({ system, question, facts }: Standing): number | undefined {
  const fish_g = system.animals
    .filter(({ role }) => role === 'fish')
    .reduce((sum, { count, mass_g = 0 }) => sum + count * mass_g, 0)
  if (fish_g === 0) return undefined
  const described = system.feeds.reduce((sum, { g_per_day }) => sum + g_per_day, 0)
  const dry = system.feeds.reduce((sum, feed) => sum + feed.g_per_day * dryOf(feed, facts), 0)
  const told = lastChanges(question.events, question.present.day).at(-1)?.g_per_day
  return ((described > 0 ? dry / described : 1) * (told ?? described)) / fish_g
}

/** Dry mass of a feed as fed, 0 to 1; a feed that the catalogue does not know is taken for dry. */
function dryOf({ kind, dry_fraction }: Feed, { typical }: FactsOfSystem): number {
  const { dry, moisture } = feedKind(kind) ?? {}
  if (dry_fraction !== undefined) return dry_fraction
  if (dry !== undefined) return typical(dry)
  return moisture === undefined ? 1 : 1 - typical(moisture)
}

/** By which share of today's ration it lies above what it was before its last change, 0 where it did not go up. */
export function rationRise({ system, question }: Standing): number {
  const changes = lastChanges(question.events, question.present.day)
  const now = changes.at(-1)?.g_per_day
  const before = changes.at(-2)?.g_per_day ?? system.feeds.reduce((sum, { g_per_day }) => sum + g_per_day, 0)
  return now === undefined || now <= before ? 0 : 1 - before / now
}

type FeedChange = Extract<Event, { readonly kind: 'feed change' }>

/** Of all feeds together, in order. */
function lastChanges(events: readonly Event[], day: number): readonly FeedChange[] {
  return events
    .filter((event): event is FeedChange => event.kind === 'feed change' && event.feed === undefined)
    .filter((event) => event.day <= day)
    .toSorted((a, b) => a.day - b.day)
}
