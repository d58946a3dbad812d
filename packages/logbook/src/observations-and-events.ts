import type { Event, Observation, ObservedQuantity } from '@holdfast/ecosystem'

import { DayClock } from './day-clock.ts'
import type { Entry, EntryOf, Stored } from './entries/entry.ts'
import { standing } from './entries/standing.ts'
import type { ZoneOn } from './entries/system-at.ts'
import { eventsOf } from './events-of.ts'
import { underNitritePeak } from './nitrite-peak.ts'

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
  /** Entries of nitrate that nitrite may have raised: told as upper bounds. */
  readonly upperBounds: readonly string[]
}

/**
 * Turns the entries that stand into observations and events of the model.
 *
 * A date without a time: readings and surveys are set at local noon, events at 13:00 local, since
 * readings of a day come before its changes unless the keeper gave times. Where only one side has a
 * time, the other gives way by a minute: a change without time follows the day's last timed reading, a
 * reading without time precedes the day's first timed event. Times that the keeper gave are kept. What
 * happens at one moment happens in the order of receipt, so that of two settings the later received holds.
 *
 * Nitrate read while there is nitrite is an upper bound (`nitrite-peak.ts`).
 *
 * @param zone  the system's IANA zone, or that of each date where the system moves
 */
export function observationsAndEvents(entries: readonly Stored[], zone: string | ZoneOn): LogForModel {
  const hold = standing(entries)
  const clock = new DayClock(hold, typeof zone === 'string' ? () => zone : zone)
  const isUpperBound = underNitritePeak(nitriteIn(hold, clock))
  const observations: Observation[] = []
  const events: Event[] = []
  const notUsed: NotUsed[] = []
  const upperBounds: string[] = []
  for (const entry of hold) {
    if (entry.kind === 'reading') {
      const why = whyNotUsed(entry.body)
      if (why !== undefined) {
        notUsed.push({ entry: entry.id, why })
        continue
      }
      const made = observation(entry, clock.reading(entry))
      const raised = made.quantity === 'nitrate' && isUpperBound({ day: made.day, date: dateIn(entry) })
      // A limit is one already; only what was taken for the value itself becomes another statement.
      if (raised && !made.belowDetection) upperBounds.push(entry.id)
      observations.push(raised ? { ...made, belowDetection: true } : made)
    } else if (entry.kind === 'survey') {
      const { surface, algae, cover } = entry.body
      const day = clock.reading(entry)
      const said = { quantity: 'cover', value: cover, belowDetection: false, surface, algae } as const
      observations.push({ day, ...said, entry: entry.id })
    } else {
      const made = eventsOf(entry, { day: clock.event(entry), entry: entry.id })
      events.push(...made)
      if (entry.kind === 'media' && made.length === 0)
        notUsed.push({ entry: entry.id, why: 'mass of the media not stated' })
    }
  }
  return { observations: observations.sort(byDay), events: events.sort(byDay), notUsed, upperBounds }
}

const byDay = (a: { readonly day: number }, b: { readonly day: number }): number => a.day - b.day
const dateIn = ({ at }: Entry): string => at.slice(0, 10)
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

function nitriteIn(entries: readonly Stored[], clock: DayClock): Parameters<typeof underNitritePeak>[0] {
  return entries.flatMap((entry) => {
    if (entry.kind !== 'reading' || entry.body.quantity !== 'nitrite' || entry.body.value === null) return []
    const { value, belowDetection } = entry.body
    return [{ day: clock.reading(entry), date: dateIn(entry), value, belowDetection }]
  })
}
