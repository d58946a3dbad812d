import type { Day, Event } from '@holdfast/ecosystem'
import type { BodyOf, JournalLine } from '@holdfast/logbook'

/** Animals of a taxon that a kept plan wants to come or go, and how many of them the log has since. */
export interface Moved {
  readonly taxon: string
  readonly count: number
  readonly logged: number
}

/** A plan that the keeper has accepted, with what has come of it. */
export interface KeptPlan {
  /** Of its entry. */
  readonly id: string
  /** As the entry carries it. */
  readonly at: string
  readonly asOf: Day
  readonly steps: readonly { readonly after_days: number; readonly animals: readonly Moved[] }[]
  readonly leave: readonly Moved[]
}

/** The last plan that stands, without what has come of it. */
export function lastPlan(
  lines: readonly JournalLine[],
): (Pick<JournalLine['entry'], 'id' | 'at'> & { readonly body: BodyOf<'crew-plan'> }) | undefined {
  const line = lines.find(({ entry, state }) => entry.kind === 'crew-plan' && state === 'holds')
  return line && { id: line.entry.id, at: line.entry.at, body: line.entry.body as BodyOf<'crew-plan'> }
}

/** What has come of a plan: whoever was logged after it counts for its first steps first. */
export function keptPlan(
  { id, at, body: { asOf, steps, leave } }: NonNullable<ReturnType<typeof lastPlan>>,
  events: readonly Event[],
): KeptPlan {
  // A plan is made at the end of its day, on which animals may have come before it and after it.
  const isLater = ({ day, entry = '' }: Event): boolean => day > asOf || (day > asOf - 1 && entry > id)
  const left = { 'animals added': new Map<string, number>(), 'animals lost': new Map<string, number>() }
  for (const event of events)
    if ((event.kind === 'animals added' || event.kind === 'animals lost') && isLater(event))
      left[event.kind].set(event.taxon, (left[event.kind].get(event.taxon) ?? 0) + event.count)
  const taken =
    (kind: keyof typeof left) =>
    ({ taxon, count }: { readonly taxon: string; readonly count: number }): Moved => {
      const rest = left[kind].get(taxon) ?? 0
      const logged = Math.min(count, rest)
      left[kind].set(taxon, rest - logged)
      return { taxon, count, logged }
    }
  return {
    id,
    at,
    asOf,
    steps: steps.map(({ after_days, animals }) => ({
      after_days,
      animals: animals.map(taken('animals added')),
    })),
    leave: leave.map(taken('animals lost')),
  }
}
