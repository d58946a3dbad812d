import type { Commissioning } from '@holdfast/commissioning'
import type { CrewAnswer, Wishes } from '@holdfast/crew-plan'
import type { LedgerAnswer, OutlookAnswer, OutlookQuestion, Running, Span } from '@holdfast/inference'
import type { LadderAnswer, LadderWishes } from '@holdfast/ladder'
import type { Purpose, ReachAnswer } from '@holdfast/reach'

export type {
  Balance,
  BandedLedger,
  BandedRow,
  CoralBand,
  Explanation,
  FactUsed,
  LedgerAnswer,
  OutlookAnswer,
  ReadingWithError,
  Running,
  Span,
} from '@holdfast/inference'

/** A ladder, of which no figure is explained. */
export interface LadderTold {
  readonly ladder: LadderAnswer
  readonly processes: LedgerAnswer['processes']
}

/** The reach of the crew, with the processes that its figures come from. */
export interface ReachTold {
  readonly reach: ReachAnswer
  readonly processes: LedgerAnswer['processes']
}

/** A crew plan, with what each animal of it is for. */
export interface CrewTold {
  readonly crew: CrewAnswer
  /** By taxon. */
  readonly purposes: Readonly<Record<string, Purpose>>
  /** Kinds of algae that the plan reckons with though nobody told of them. */
  readonly untold: readonly string[]
  /** Simulated tanks in which the crew was tried. */
  readonly worlds: number
  readonly processes: LedgerAnswer['processes']
}

/** How the start-up of a system stands, of which no figure is explained. */
export interface StartUpTold {
  readonly startUp: Commissioning
  readonly processes: LedgerAnswer['processes']
}

/** How a question is asked: a rough answer of the first members may come before the whole one. */
export interface Asking<Answer> extends Running {
  readonly firstMembers?: number
  readonly first: (answer: Answer) => void
}

/** What the worker needs of the model. */
export interface Model {
  outlook(question: OutlookQuestion, asking: Asking<OutlookAnswer>): Promise<OutlookAnswer>
  ledger(question: OutlookQuestion, span: Span, asking: Asking<LedgerAnswer>): Promise<LedgerAnswer>
  reach(question: OutlookQuestion, asking: Asking<ReachTold>): Promise<ReachTold>
  crew(question: OutlookQuestion, wishes: Wishes, asking: Asking<CrewTold>): Promise<CrewTold>
  ladder(question: OutlookQuestion, wishes: LadderWishes, asking: Asking<LadderTold>): Promise<LadderTold>
  startUp(question: OutlookQuestion, asking: Asking<StartUpTold>): Promise<StartUpTold>
  /** Nobody waits for anything: what is under way is dropped. */
  rest(): void
}
