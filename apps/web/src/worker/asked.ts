import type { FromWorker, Issue } from './protocol.ts'

/** What a view knows of a question it asked. */
export interface Asked<A> {
  readonly answer?: A | undefined
  /** True: the answer is to other inputs than those now on the page. */
  readonly old: boolean
  /** There while a run is under way. */
  readonly working?: Progress | undefined
  readonly issue?: Issue | undefined
  readonly cancel: () => void
}

export interface Progress {
  /** 0 to 1 */
  readonly share: number
  /** True once it took over a second. */
  readonly long: boolean
}

/** The state of one desk: what is under way, and what went wrong last. */
export interface DeskState {
  readonly working?: Progress
  readonly issue?: Issue
}

export const begun = (): DeskState => ({ working: { share: 0, long: false } })

export const overASecond = (before: DeskState): DeskState =>
  before.working ? { ...before, working: { ...before.working, long: true } } : before

export function afterReply(before: DeskState, reply: FromWorker): DeskState {
  const long = before.working?.long ?? false
  if (reply.type === 'progress') return { working: { share: reply.share, long } }
  if (reply.type === 'partial') return { working: { share: 0, long } }
  return reply.type === 'failed' ? { issue: reply.issue } : {}
}
