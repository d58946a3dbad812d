import type { PlaceWeek } from '@holdfast/ecosystem'
import type { Band } from './band.ts'
import type { Barred } from './candidates.ts'
import type { Step } from './steps.ts'
import type { Fate } from './trial-run.ts'

/** An issue as data. */
export interface PlanIssue {
  readonly code:
    | 'cycle unfinished'
    | 'too much by hand'
    | 'not to be had'
    | 'no answer in time'
    | 'limits clash'
    | 'starves'
    | 'not held'
    | 'cancelled'
  readonly where: string
  readonly got: string
  readonly accepted: string
  readonly next: string
}

/** What one wish would have to give, where others stay. */
export interface Relaxation {
  /** The wish in words, as in `limits` of its clash. */
  readonly limit: string
  /** Of a wish with a number: as asked, and the least that would do. Without them it has to be let go. */
  readonly from?: number
  readonly to?: number
  readonly words: string
}

/** Wishes that no crew keeps together, each of which alone could give. */
export interface Clash {
  readonly limits: readonly string[]
  readonly relaxations: readonly Relaxation[]
}

export interface Planned {
  readonly taxon: string
  readonly tradeName: string
  readonly group: string
  /** Animals of it that live there today; that come; that are given away. */
  readonly there: number
  readonly come: number
  readonly leave: number
  /** To be ordered, so that about so many are left after the losses of the first month. */
  readonly order: number
  /** Price of the order, US dollars: low and high. */
  readonly price_usd: { readonly low: number; readonly high: number }
  /** Lost in a year in the trial run, whatever the cause. */
  readonly lostInYear: number
  /** The same by cause, so that replacing can be planned. */
  readonly turnover: Turnover
  /** Algae that all of them together eat in the trial three months on, g dry a week. */
  readonly eats_g_week: number
  readonly cautions: readonly string[]
}

/** Animals that are there and for which too little grows: to be fed by hand, or to be given away in part. */
export interface ToFeed {
  readonly taxon: string
  readonly tradeName: string
  /** Of those that stay. */
  readonly count: number
  /** Dried algae that all of them lack when least grows, g a week: at most so much. */
  readonly g_week: number
  /** So many fewer would find enough. */
  readonly tooMany: number
  /** Until half of what they can live on is used up, and some are lost to hunger; days from today. */
  readonly within_days: number
}

/** Animals of a taxon that a year is expected to cost, by cause. */
export interface Turnover {
  /** Of those that come, in their first month. */
  readonly firstMonth: number
  readonly age: number
  /** To tank mates that eat or harry them. */
  readonly mates: number
  readonly hunger: number
  /** After the first month one goes so often; nothing where none does. */
  readonly oneEvery_days?: number
}

/** What a plan makes of the water and the algae, beside husbandry unchanged; medians. */
export interface Effect {
  /** At the end of each month of thirty days. */
  readonly water: readonly (Water & { readonly without: Water })[]
  /** Share of each place that is covered three months on. */
  readonly cover: readonly {
    readonly surface: string
    readonly patch: string
    readonly kind: string
    readonly cover: number
    readonly without: number
  }[]
}

/** One stream of the books of the coming year, mg a day, with a plan and without; medians. */
export interface BookLine {
  /** In words: what the crew moves inside, what comes in and goes out, and what is inside more at the end. */
  readonly stream: string
  readonly N_mg_day: number
  readonly P_mg_day: number
  readonly without: { readonly N_mg_day: number; readonly P_mg_day: number }
}

export interface Water {
  readonly nitrate_mg_L: number
  readonly phosphate_mg_L: number
  /** The same with their intervals. */
  readonly bands: Readonly<Record<'nitrate_mg_L' | 'phosphate_mg_L', Band>>
}

/** Another crew that holds as well for at most a tenth more, half of it or more by other animals. */
export type Alternative = Pick<
  Extract<CrewAnswer, { readonly status: 'plan' | 'refused' }>,
  'cost' | 'crew' | 'byHand' | 'toFeed' | 'steps' | 'check'
>

/** What is left to the hand. */
export interface HandWork {
  readonly surface: string
  readonly patch: PlaceWeek['patch']
  readonly kind: string
  readonly grams_dry_per_week: number
  /** The same with its interval. */
  readonly band: Band
}

export type CrewAnswer =
  | {
      /** 'refused' where somebody that comes starves in the trial run, or something is not held even with the hand's work; `check` says who and what. */
      readonly status: 'plan' | 'refused'
      /** False where the gap to the best plan was not proved in time. */
      readonly proved: boolean
      /** Prices, replacements, charges for what may go wrong and the worth of the hand's work in a year, US dollars. */
      readonly cost: number
      readonly crew: readonly Planned[]
      readonly byHand: readonly HandWork[]
      /** Of those that are there, who has to be fed while little grows; left out where nobody has. */
      readonly toFeed?: readonly ToFeed[]
      readonly steps: readonly Step[]
      readonly barred: readonly Barred[]
      /** Others that were tried and hold, the cheapest first; none for a refusal. */
      readonly alternatives: readonly Alternative[]
      /** Left out of a refusal. */
      readonly effect?: Effect
      /** What the plan adds to the ledger; left out of a refusal. */
      readonly books?: readonly BookLine[]
      readonly check: { readonly crew: readonly Fate[]; readonly issues: readonly PlanIssue[] }
    }
  | {
      readonly status: 'none'
      readonly issues: readonly PlanIssue[]
      readonly barred: readonly Barred[]
      /** Where wishes cannot be kept together. */
      readonly clashes?: readonly Clash[]
    }
