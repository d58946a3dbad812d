import type { Asking, Model } from './answers.ts'
import type { Answer, FromWorker, Issue, Question, RunName, ToWorker } from './protocol.ts'

export interface Clerk {
  receive(message: ToWorker): Promise<void>
  /** Drops what is left to do. */
  leave(): void
  /** Whether a question is not answered yet. */
  isAtWork(): boolean
}

/** Answers the questions of one line inside the worker, the latest alone: what is left of an older one is dropped. */
export function clerk(model: Model, post: (reply: FromWorker) => void): Clerk {
  let latest = 0
  let processesSent: Answer['processes'] | undefined

  function answered(type: 'partial' | 'done', name: RunName, answer: Answer): void {
    if (answer.processes === processesSent)
      post({ type, ...name, answer: { ...answer, processes: [] }, sameProcesses: true })
    else {
      processesSent = answer.processes
      post({ type, ...name, answer })
    }
  }

  function work(name: RunName, question: Question): Promise<Answer> {
    const { outlook, firstMembers } = question
    const asking: Asking<Answer> = {
      ...(firstMembers === undefined ? {} : { firstMembers }),
      first: (answer) => answered('partial', name, answer),
      onProgress: (share) => post({ type: 'progress', ...name, share }),
      cancelled: () => latest !== name.seq,
    }
    switch (question.kind) {
      case 'outlook':
        return model.outlook(outlook, asking)
      case 'ledger':
        return model.ledger(outlook, question.span, asking)
      case 'reach':
        return model.reach(outlook, asking)
      case 'start-up':
        return model.startUp(outlook, asking)
      case 'crew':
        return model.crew(outlook, question.wishes, asking)
      case 'ladder':
        return model.ladder(outlook, question.wishes, asking)
    }
  }

  return {
    async receive({ type: _type, question, ...name }) {
      latest = name.seq
      try {
        answered('done', name, await work(name, question))
      } catch (error) {
        post({ type: 'failed', ...name, issue: issueOf(error) })
      }
      if (latest === name.seq) latest = 0
    },
    leave() {
      latest = 0
    },
    isAtWork: () => latest !== 0,
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
