import { bookkeeping, futures, ledgerInRounds, modelOf, pastInRounds } from '@holdfast/inference'
import type { ShareAsked, ShareDone, Task } from './shares.ts'

type Run = (items: readonly unknown[]) => readonly unknown[]

/** Tasks whose equations are kept: an outlook's future, and a past under way beside it. */
const kept = 3

/** What the second worker does: runs the members of a task that it is sent. */
export function second(): (asked: ShareAsked) => ShareDone {
  const known = new Map<number, Run>()
  return ({ share, number, task, items }) => {
    try {
      const run = known.get(number) ?? runOf(task)
      known.delete(number)
      known.set(number, run)
      for (const [oldest] of known) if (known.size > kept) known.delete(oldest)
      return { share, results: run(items) }
    } catch {
      return { share }
    }
  }
}

/** Items came from the first worker's work on the same task, which types them. */
function runOf(task: Task): Run {
  switch (task.kind) {
    case 'past':
      return pastInRounds(task.outlook).run as Run
    case 'ledger':
      return ledgerInRounds(task.outlook, task.span).run as Run
    case 'books':
      return bookkeeping(task.outlook, task.span) as Run
    case 'future':
      return futures(modelOf(task.outlook), task.outlook) as Run
  }
}
