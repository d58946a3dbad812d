import {
  bookkeeping,
  futures,
  ledgerInRounds,
  modelOf,
  type OutlookQuestion,
  pastInRounds,
} from '@holdfast/inference'
import { withLog } from './log-once.ts'
import { pastInputs } from './past-inputs.ts'
import type { ShareAsked, ShareDone, Task } from './shares.ts'

type Run = (items: readonly unknown[]) => readonly unknown[]

/** Tasks that are kept at hand: an outlook's future, and a past under way beside it. */
const kept = 3

/** What the second worker does: runs the members of a task that it is sent. */
export function second(): (asked: ShareAsked) => ShareDone {
  const known = new Map<number, Run>()
  const whole = withLog()
  const equations = equationsKept()
  return ({ share, number, task: lean, items }) => {
    try {
      // Every log is taken in, also where the task is known: the next may come without it.
      const task: Task = { ...lean, outlook: whole(lean.outlook) }
      const run = known.get(number) ?? runOf(task, equations)
      known.delete(number)
      known.set(number, run)
      for (const [oldest] of known) if (known.size > kept) known.delete(oldest)
      return { share, results: run(items) }
    } catch {
      return { share }
    }
  }
}

type Equations = ReturnType<typeof modelOf>

/** A lever moves the future alone: its equations are those of the question before, and to make them takes longest. */
function equationsKept(): (outlook: OutlookQuestion) => Equations {
  let last: { readonly asked: string; readonly model: Equations } | undefined
  return (outlook) => {
    const asked = pastInputs(outlook)
    if (last?.asked !== asked) last = { asked, model: modelOf(outlook) }
    return last.model
  }
}

/** Items came from the first worker's work on the same task, which types them. */
function runOf(task: Task, equations: (outlook: OutlookQuestion) => Equations): Run {
  switch (task.kind) {
    case 'past':
      return pastInRounds(task.outlook).run as Run
    case 'ledger':
      return ledgerInRounds(task.outlook, task.span).run as Run
    case 'books':
      return bookkeeping(task.outlook, task.span) as Run
    case 'future':
      return futures(equations(task.outlook), task.outlook) as Run
  }
}
