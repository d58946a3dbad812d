import type { Event, Observation, ObservedQuantity } from '@holdfast/ecosystem'

import type { Entry, EntryOf, Stored } from './entries/entry.ts'
import { standing } from './entries/standing.ts'
import { modelDay, modelDayOfTime } from './model-day.ts'

const minute = 1 / 1440
const observed = ['nitrate', 'phosphate', 'ammonia', 'nitrite'] as const satisfies readonly ObservedQuantity[]
type Observed = (typeof observed)[number]

/** An entry that says nothing the model can take, and why. */
export interface NotUsed {
  readonly entry: string
  readonly why:
    | 'not observed by the model'
    | 'not detected and no limit stated'
    | 'above the range of the kit'
    | 'mass of the media not stated'
}

/** What a log says to the model, in the order of time. */
export interface LogForModel {
  readonly observations: readonly Observation[]
  readonly events: readonly Event[]
  /** Readings and events left out, each with its reason; notes and descriptions are not among them. */
  readonly notUsed: readonly NotUsed[]
}

/**
 * Turns the entries that stand into observations and events of the model.
 *
 * A date without a time: readings and surveys are set at local noon, events at 13:00 local, since
 * readings of a day come before its changes unless the keeper gave times. Where only one side has a
 * time, the other gives way by a minute: a change without time follows the day's last timed reading, a
 * reading without time precedes the day's first timed event. Times that the keeper gave are kept.
 *
 * @param timeZone  the system's IANA zone
 */
export function observationsAndEvents(entries: readonly Stored[], timeZone: string): LogForModel {
  const hold = standing(entries)
  const clock = new DayClock(hold, timeZone)
  const observations: Observation[] = []
  const events: Event[] = []
  const notUsed: NotUsed[] = []
  for (const entry of hold) {
    if (entry.kind === 'reading') {
      const why = whyNotUsed(entry.body)
      if (why === undefined) observations.push(observation(entry, clock.reading(entry)))
      else notUsed.push({ entry: entry.id, why })
    } else if (entry.kind === 'survey') {
      const { surface, algae, cover } = entry.body
      const day = clock.reading(entry)
      observations.push({
        day,
        quantity: 'cover',
        value: cover,
        belowDetection: false,
        surface,
        algae,
        entry: entry.id,
      })
    } else {
      const made = eventsOf(entry, clock)
      if (made === undefined) notUsed.push({ entry: entry.id, why: 'mass of the media not stated' })
      else events.push(...made)
    }
  }
  return { observations: observations.sort(byDay), events: events.sort(byDay), notUsed }
}

const byDay = (a: { readonly day: number }, b: { readonly day: number }): number => a.day - b.day
const isReading = (entry: Entry): boolean => entry.kind === 'reading' || entry.kind === 'survey'
const isObserved = (quantity: string): quantity is Observed => observed.some((one) => one === quantity)

function whyNotUsed({ quantity, value, aboveRange }: EntryOf<'reading'>['body']): NotUsed['why'] | undefined {
  if (!isObserved(quantity)) return 'not observed by the model'
  if (value === null) return 'not detected and no limit stated'
  // The model knows no lower bound yet; taken as a value it would pull the fit down.
  if (aboveRange === true) return 'above the range of the kit'
  return undefined
}

function observation({ id, body }: EntryOf<'reading'>, day: number): Observation {
  const { quantity, value, belowDetection } = body
  if (!isObserved(quantity) || value === null) throw new Error(`entry ${id} is no observation`)
  return { day, quantity, value, belowDetection, entry: id }
}

/** Events of an entry (none for a note or a description), or undefined where its mass is wanting. */
function eventsOf(entry: Stored, clock: DayClock): readonly Event[] | undefined {
  const when = (): { readonly day: number; readonly entry: string } => ({
    day: clock.event(entry),
    entry: entry.id,
  })
  switch (entry.kind) {
    case 'water-change': {
      const { volume_L, water } = entry.body
      return [{ ...when(), kind: 'water change', volume_L, ...(water && { water }) }]
    }
    case 'feeding':
      return [{ ...when(), kind: 'feed change', g_per_day: entry.body.g_per_day }]
    case 'media': {
      const { action, mass_g } = entry.body
      if (action === 'removed') return [{ ...when(), kind: 'media removed' }]
      if (mass_g === undefined) return undefined
      const placed: Event = { ...when(), kind: 'media placed', mass_g }
      return action === 'placed' ? [placed] : [{ ...when(), kind: 'media removed' }, placed]
    }
    case 'hand-removal': {
      const { surface, algae, share, leftToDrift } = entry.body
      return [{ ...when(), kind: 'hand removal', surface, algae, share, leftToDrift }]
    }
    case 'animals': {
      const { change, taxon, count, mass_g } = entry.body
      const kind = change === 'added' ? 'animals added' : 'animals lost'
      return [{ ...when(), kind, taxon, count, ...(mass_g !== undefined && { mass_g }) }]
    }
    case 'dose':
      return [{ ...when(), kind: 'dose', substance: entry.body.substance, mass_g: entry.body.mass_g }]
    case 'equipment-change': {
      const { equipment, changes } = entry.body
      return [{ ...when(), kind: 'equipment change', equipment, changes }]
    }
    default:
      return []
  }
}

/** Sets entries on the model's clock, readings of a day before its changes. */
class DayClock {
  readonly #timeZone: string
  readonly #lastReading = new Map<string, number>()
  readonly #firstEvent = new Map<string, number>()

  constructor(entries: readonly Entry[], timeZone: string) {
    this.#timeZone = timeZone
    for (const entry of entries) {
      if (entry.precision === 'day' || entry.kind === 'note' || entry.kind === 'system') continue
      const [date, day] = [entry.at.slice(0, 10), modelDayOfTime(entry.at)]
      if (isReading(entry)) this.#lastReading.set(date, Math.max(day, this.#lastReading.get(date) ?? day))
      else this.#firstEvent.set(date, Math.min(day, this.#firstEvent.get(date) ?? day))
    }
  }

  reading({ at, precision }: Entry): number {
    if (precision === 'minute') return modelDayOfTime(at)
    const firstEvent = this.#firstEvent.get(at) ?? Number.POSITIVE_INFINITY
    return Math.min(modelDay(at, 12, this.#timeZone), firstEvent - minute)
  }

  event({ at, precision }: Entry): number {
    if (precision === 'minute') return modelDayOfTime(at)
    const lastReading = this.#lastReading.get(at) ?? Number.NEGATIVE_INFINITY
    return Math.max(modelDay(at, 13, this.#timeZone), lastReading + minute)
  }
}
