import type { Day, Event, Observation, System } from '@holdfast/ecosystem'
import { descriptions } from './entries/descriptions.ts'
import type { Stored } from './entries/entry.ts'
import { factsAt, type OwnFact } from './entries/facts-at.ts'
import { standing } from './entries/standing.ts'
import { systemAt, zoneOn } from './entries/system-at.ts'
import { equipmentRemarks } from './equipment-remarks.ts'
import { lateOn, modelDay } from './model-day.ts'
import { observationsAndEvents } from './observations-and-events.ts'
import { type Outbreak, outbreaksOf } from './outbreaks.ts'
import { salinityOfLate } from './salinity-of-late.ts'

/** A system with its log, as the model and the pages take it. */
export interface SystemLog {
  readonly system: System
  readonly observations: readonly Observation[]
  readonly events: readonly Event[]
  /** The keeper's own numbers of facts, by the ids of the facts: a run has one number from end to end, the last told. */
  readonly ownFacts: readonly OwnFact[]
  /** The one that changed last first. */
  readonly outbreaks: readonly Outbreak[]
  /** Practical salinity as read last, of late; left out where it was not. */
  readonly salinity_psu?: number
  /** The day of the first entry, at noon or at its first reading. */
  readonly from: Day
  /** The end of the last day with an entry, so that a log of the past still has an outlook. */
  readonly asOf: Day
  /** ISO dates of the first and the last day. */
  readonly dates: { readonly from: string; readonly to: string }
  /** Entries that stand, descriptions included, in the order of receipt. */
  readonly entries: readonly Stored[]
  /** Sentences for people: what was taken though the log does not quite say it, and what was left out. */
  readonly remarks: readonly string[]
}

/**
 * Puts the entries of one system together.
 *
 * A log that reaches further back than its first description is read with that description, and says
 * so in a remark.
 *
 * @param stored  the entries of one system in the order of receipt
 * @returns undefined where no entry that stands describes the system
 */
export function systemLog(stored: readonly Stored[]): SystemLog | undefined {
  const [zone, days] = [zoneOn(stored), descriptions(stored).map(({ from }) => from.slice(0, 10))]
  const [earliest] = days
  if (zone === undefined || earliest === undefined) return undefined
  const entries = standing(stored)
  const written = entries.filter(isOfTheTank).map(({ at }) => at.slice(0, 10))
  const dates = (written.length > 0 ? written : days).toSorted()
  const [first = earliest] = dates
  const last = dates.at(-1) ?? earliest
  const newest = stored.reduce((latest, { knownAt }) => (knownAt > latest ? knownAt : latest), '')
  const system = systemAt(stored, last < earliest ? earliest : last, newest)
  if (system === undefined) return undefined
  const { observations, events, notUsed, upperBounds } = observationsAndEvents(stored, zone)
  const noon = modelDay(first, 12, zone(first))
  const asOf = lateOn(last, zone(last))
  const salinity_psu = salinityOfLate(entries, asOf, zone(last))
  return {
    system,
    observations,
    events,
    ownFacts: [...factsAt(stored, endOfTime, newest).values()].toSorted((a, b) => (a.fact < b.fact ? -1 : 1)),
    from: [...observations, ...events].reduce((day, one) => Math.min(day, one.day), noon),
    asOf,
    outbreaks: outbreaksOf(stored),
    ...(salinity_psu === undefined ? {} : { salinity_psu }),
    dates: { from: first, to: last },
    entries,
    remarks: [
      ...(first < earliest
        ? [
            `The system is described from ${earliest} on; the days from ${first} are read with that description.`,
          ]
        : []),
      ...leftOut(notUsed.map(({ why }) => why)),
      ...equipmentRemarks(entries, system),
      ...unknownFeeds(system, events),
      ...nitriteRemark(upperBounds.length),
    ],
  }
}

/** After every day that can be told. */
const endOfTime = '9999-12-31'

/** Entries of what was so or was done in the tank; what the program or the keeper says about the log is none. */
const isOfTheTank = ({ kind }: Stored): boolean => !ofTheLog.includes(kind)

const ofTheLog: readonly Stored['kind'][] = ['system', 'fact-override', 'shown-outlook', 'crew-plan']

/** What the model cannot use yet, one sentence a reason; quantities it does not observe are no surprise. */
function leftOut(reasons: readonly string[]): readonly string[] {
  const telling = reasons.filter((why) => why !== 'not observed by the model')
  return [...new Set(telling)].map((why) => {
    const count = telling.filter((one) => one === why).length
    return `${count} ${count === 1 ? 'entry was' : 'entries were'} not used: ${why}.`
  })
}

/** The model knows what is in a feed by the description; of another it could only guess. */
function unknownFeeds({ feeds }: System, events: readonly Event[]): readonly string[] {
  const known = new Set(feeds.map(({ kind }) => kind))
  const fed = events.flatMap((event) => (event.kind === 'feed change' && event.feed ? [event.feed] : []))
  const unknown = fed.filter((feed) => !known.has(feed))
  const has = known.size === 0 ? 'which has none' : `which has ${[...known].join(', ')}`
  return [...new Set(unknown)].map((feed) => {
    const count = unknown.filter((one) => one === feed).length
    return `${count} ${count === 1 ? 'feeding was' : 'feedings were'} not used: the feed "${feed}" is not in the description of the system, ${has}.`
  })
}

const nitriteRemark = (count: number): readonly string[] =>
  count === 0
    ? []
    : [
        `${count} ${count === 1 ? 'reading' : 'readings'} of nitrate ${count === 1 ? 'is' : 'are'} taken as an upper bound: there was nitrite, which most kits read as nitrate.`,
      ]
