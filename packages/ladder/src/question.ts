import type { Present } from '@holdfast/crew-plan'
import type { Event, Observation, System } from '@holdfast/ecosystem'
import type { Answers } from '@holdfast/identification'

/** What the keeper wants a ladder for. */
export interface LadderWishes {
  /** Key of the kind that is meant; without it the one of which most grows. */
  readonly kind?: string
  /** What was noted of the growth, by the traits of the field key: it names the kind where none is meant. */
  readonly noted?: Answers
  /** Key of the finer kind, where it is known. */
  readonly finer?: string
  /** Title or key of the measure that ended it the last time: it comes first. */
  readonly worked?: string
  /** Of late, as read or as it must be after what evaporated; left out where nobody knows. */
  readonly salinity_psu?: number
  /** Animals that are safe with caution only: all of them; without it none. */
  readonly withCaution?: 'all'
}

/** What a ladder is asked for: a system as it stands and its log. */
export interface LadderQuestion extends LadderWishes {
  /** The ensemble on the day on which one looks. */
  readonly present: Present
  /** The description that holds on that day. */
  readonly system: System
  readonly observations: readonly Observation[]
  readonly events: readonly Event[]
  /** First day of the log. */
  readonly from: number
}
