import type { OutlookQuestion, Span } from '@holdfast/inference'
import type { Lean } from './log-once.ts'

/** Work on an ensemble that two workers share, told so that the other can take it up. */
export type Task<Outlook = OutlookQuestion> =
  | { readonly kind: 'past' | 'future'; readonly outlook: Outlook }
  | { readonly kind: 'ledger' | 'books'; readonly outlook: Outlook; readonly span: Span }

/** To the second worker: members of a task to be run. Tasks and shares are counted. */
export interface ShareAsked {
  readonly type: 'share'
  readonly share: number
  readonly number: number
  readonly task: Task<Lean>
  readonly items: readonly unknown[]
}

/** Its reply; without results it failed, and the first worker will meet the same and say why. */
export interface ShareDone {
  readonly share: number
  readonly results?: readonly unknown[]
}
