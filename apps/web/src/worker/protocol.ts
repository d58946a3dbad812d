import type { Wishes } from '@holdfast/crew-plan'
import type { OutlookQuestion } from '@holdfast/inference'
import type { LadderWishes } from '@holdfast/ladder'
import type {
  CrewTold,
  LadderTold,
  LedgerAnswer,
  OutlookAnswer,
  ReachTold,
  Span,
  StartUpTold,
} from './answers.ts'
import type { Lean } from './log-once.ts'

/** With `firstMembers` a rough answer of so many members comes first. */
export type Question<Outlook = OutlookQuestion> = {
  readonly outlook: Outlook
  readonly firstMembers?: number
} & (
  | { readonly kind: 'outlook' }
  | { readonly kind: 'reach' }
  | { readonly kind: 'start-up' }
  | { readonly kind: 'crew'; readonly wishes: Wishes }
  | { readonly kind: 'ledger'; readonly span: Span }
  | { readonly kind: 'ladder'; readonly wishes: LadderWishes }
)

/** Which answer belongs to which kind of question. */
export interface AnswerTo {
  readonly outlook: OutlookAnswer
  readonly ledger: LedgerAnswer
  readonly reach: ReachTold
  readonly crew: CrewTold
  readonly ladder: LadderTold
  readonly 'start-up': StartUpTold
}

export type Answer = AnswerTo[keyof AnswerTo]

/** Names a run: `seq` counts the questions of one page, `inputsHash` is of what was asked. */
export interface RunName {
  readonly run: string
  readonly seq: number
  readonly inputsHash: string
}

/** A question; what is left to do of the one before on the same line is dropped. */
export type ToWorker = RunName & { readonly type: 'ask'; readonly question: Question }

/** What went wrong, as data; the words are made where it is shown. */
export interface Issue {
  readonly code: string
  readonly where: string
  readonly got: string
  readonly accepted: string
  readonly next: string
}

export type FromWorker =
  | (RunName & { readonly type: 'progress'; readonly share: number })
  | (RunName & {
      readonly type: 'partial' | 'done'
      readonly answer: Answer
      /** True: its processes are left out, for they are those of the answer before, and long. */
      readonly sameProcesses?: true
    })
  | (RunName & { readonly type: 'failed'; readonly issue: Issue })

/** What a view says on its line, as the one worker of the page hears it. */
export type ToOffice =
  | (RunName & { readonly type: 'ask'; readonly line: number; readonly question: Question<Lean> })
  /** What is left to do for this line is dropped. */
  | { readonly type: 'leave'; readonly line: number }

export type FromOffice = { readonly line: number } & (FromWorker | { readonly type: 'left' })

export const sameRun = (a: RunName, b: RunName) =>
  a.run === b.run && a.seq === b.seq && a.inputsHash === b.inputsHash

/** The answer to a run that was cancelled. */
export const stopped: Issue = {
  code: 'cancelled',
  where: 'This run',
  got: 'was stopped before it was done',
  accepted: '',
  next: 'What you see is from before.',
}
