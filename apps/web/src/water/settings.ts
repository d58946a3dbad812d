import type { Equipment, Event, FerricMediaReactor, WaterChangeRoutine } from '@holdfast/ecosystem'
import type { Levers } from '@holdfast/inference'
import type { SystemData } from '../shell/system-data.ts'

/** What the levers set, each in one number. */
export interface Settings {
  /** g a day, of all feeds together */
  readonly feed_g: number
  readonly water_L: number
  readonly water_days: number
  /** Dry mass of ferric media. */
  readonly media_g: number
  readonly media_days: number
}

export type Setting = keyof Settings

/** How the system is kept today; what is not done, or not by a plan, is left out. */
export type Today = { readonly [Of in Setting]?: number }

/** Where a lever stands that moves something that is not done today. */
const usual: Settings = { feed_g: 0, water_L: 0, water_days: 7, media_g: 0, media_days: 60 }

export const settings = Object.keys(usual) as readonly Setting[]

/** As today, with the usual in place of what is not done. */
export const asToday = (today: Today): Settings => ({ ...usual, ...today })

/** How a system is kept today: as described, and as the log has changed it since. */
export function todayOf({ system, events, asOf }: Pick<SystemData, 'system' | 'events' | 'asOf'>): Today {
  const past = events.filter(({ day }) => day <= asOf)
  const of = <Kind extends Equipment['kind']>(kind: Kind) =>
    system.equipment.find((item): item is Extract<Equipment, { readonly kind: Kind }> => item.kind === kind)
  return {
    ...(system.feeds.length > 0 ? { feed_g: fed(system.feeds, past) } : {}),
    ...water(of('water change'), past),
    ...media(of('ferric media reactor'), past, asOf),
  }
}

/** What is fed in all, after every change of it. */
function fed(feeds: SystemData['system']['feeds'], past: readonly Event[]): number {
  const rations = new Map(feeds.map(({ kind, g_per_day }) => [kind, g_per_day]))
  const all = () => [...rations.values()].reduce((sum, ration) => sum + ration, 0)
  const start = all()
  for (const event of past) {
    if (event.kind !== 'feed change') continue
    if (event.feed !== undefined && rations.has(event.feed)) rations.set(event.feed, event.g_per_day)
    if (event.feed === undefined)
      for (const { kind, g_per_day } of feeds)
        rations.set(kind, start > 0 ? (g_per_day * event.g_per_day) / start : 0)
  }
  return all()
}

function water(routine: WaterChangeRoutine | undefined, past: readonly Event[]): Today {
  if (!routine) return {}
  const { volume_L: water_L, every_days: water_days } = changed(routine, ['volume_L', 'every_days'], past)
  return { water_L, water_days }
}

function media(reactor: FerricMediaReactor | undefined, past: readonly Event[], asOf: number): Today {
  if (!reactor) return {}
  const { placed = asOf, removed = Number.POSITIVE_INFINITY } = reactor
  const described = changed(reactor, ['mass_g', 'replaced_every_days'], past)
  const handled = past.findLast(isMedia)
  const last = past.filter(isMedia).findLast(({ kind }) => kind === 'media placed')
  const inside = handled
    ? handled.kind === 'media placed'
      ? handled.mass_g
      : 0
    : placed <= asOf && asOf < removed
      ? described.mass_g
      : 0
  // As the model has it: who logs each filling fills by no plan.
  const every = last ? undefined : described.replaced_every_days
  return { media_g: inside, ...(every === undefined ? {} : { media_days: every }) }
}

const isMedia = (
  event: Event,
): event is Extract<Event, { readonly kind: 'media placed' | 'media removed' }> =>
  (event.kind === 'media placed' || event.kind === 'media removed') && event.medium !== 'carbon'

/** Equipment with the numbers that the log has changed since it was described. */
function changed<Item extends Equipment>(
  item: Item,
  keys: readonly (keyof Item & string)[],
  past: readonly Event[],
): Item {
  const told = past.flatMap((event) =>
    event.kind === 'equipment change' && event.equipment === item.kind
      ? keys.flatMap((key) => (typeof event.changes[key] === 'number' ? [[key, event.changes[key]]] : []))
      : [],
  )
  return { ...item, ...Object.fromEntries(told) }
}

export const isSame = (one: Settings, other: Settings) => settings.every((key) => one[key] === other[key])

/** Whether any of these stands elsewhere than today. */
export function isMoved(set: Settings, today: Today, ...keys: readonly Setting[]): boolean {
  const start = asToday(today)
  return keys.some((key) => set[key] !== start[key])
}

/** The levers that lead from today's husbandry to these settings; none where nothing is moved. */
export function leversOf(set: Settings, today: Today): Levers | undefined {
  const { feed_g } = asToday(today)
  const moved = (...keys: readonly Setting[]) => isMoved(set, today, ...keys)
  const levers: Levers = {
    ...(moved('feed_g') && feed_g > 0 ? { feedFactor: set.feed_g / feed_g } : {}),
    ...(moved('water_L', 'water_days')
      ? { waterChange: { volume_L: set.water_L, every_days: set.water_days } }
      : {}),
    ...(moved('media_g', 'media_days') ? { media: { mass_g: set.media_g, every_days: set.media_days } } : {}),
  }
  return Object.keys(levers).length > 0 ? levers : undefined
}
