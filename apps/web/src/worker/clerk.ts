import type { Model, Running } from './answers.ts'
import {
  type Answer,
  type FromWorker,
  type Issue,
  type Question,
  type RunName,
  stopped,
  type ToWorker,
} from './protocol.ts'

export interface Clerk {
  receive(message: ToWorker): void
}

/**
 * Works questions off one at a time inside the worker. Where a coarse answer comes first,
 * messages are let in between the two, so that a cancel is heard there.
 *
 * @param pause runs its argument after waiting messages were received
 */
export function clerk(
  model: Model,
  post: (reply: FromWorker) => void,
  pause: (next: () => void) => void,
): Clerk {
  const cancelled = new Set<string>()

  function work(name: RunName, question: Question): Answer | undefined {
    const running: Running = {
      onProgress: (share) => post({ type: 'progress', ...name, share }),
      cancelled: () => cancelled.has(name.run),
    }
    if (running.cancelled()) return undefined
    return question.kind === 'ledger'
      ? model.ledger(question.outlook, question.span, running)
      : model.outlook(question.outlook, running)
  }

  function guarded(name: RunName, stage: () => void): void {
    try {
      stage()
    } catch (error) {
      cancelled.delete(name.run)
      post({ type: 'failed', ...name, issue: issueOf(error) })
    }
  }

  function ask(name: RunName, question: Question): void {
    const finish = () =>
      guarded(name, () => {
        const answer = work(name, question)
        if (answer && !cancelled.has(name.run)) post({ type: 'done', ...name, answer })
        else post({ type: 'failed', ...name, issue: stopped })
        cancelled.delete(name.run)
      })
    const { coarseMembers } = question
    if (coarseMembers === undefined) finish()
    else
      guarded(name, () => {
        const first = work(name, { ...question, outlook: { ...question.outlook, members: coarseMembers } })
        if (first && !cancelled.has(name.run)) post({ type: 'partial', ...name, answer: first })
        pause(finish)
      })
  }

  return {
    receive(message) {
      if (message.type === 'cancel') cancelled.add(message.run)
      else ask({ run: message.run, seq: message.seq, inputsHash: message.inputsHash }, message.question)
    },
  }
}

/** The packages below throw issues as data; anything else is a defect and says what it was. */
function issueOf(error: unknown): Issue {
  if (error && typeof error === 'object' && 'code' in error && 'where' in error) {
    const issue = error as Partial<Issue>
    return {
      code: String(issue.code),
      where: String(issue.where),
      got: String(issue.got ?? ''),
      accepted: String(issue.accepted ?? ''),
      next: String(issue.next ?? ''),
    }
  }
  const got = error instanceof Error ? error.message : String(error)
  return {
    code: 'unexpected',
    where: 'The model',
    got,
    accepted: '',
    next: 'What you see is from before. Reload the page to try again.',
  }
}
