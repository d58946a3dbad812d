import { type InRounds, type Running, stopped } from '@holdfast/inference'
import { withoutLog } from './log-once.ts'
import type { ShareAsked, ShareDone, Task } from './shares.ts'

/** The part of a second worker that the first one uses. */
export interface Second {
  postMessage(message: ShareAsked): void
  onmessage: ((event: { readonly data: ShareDone }) => void) | null
  onerror: (() => void) | null
}

export interface Crew {
  /**
   * Runs items, every other pair of them in the second worker; the results are in the order of the items and
   * have the same bits as without it. Messages are let in before it ends.
   */
  run<Item, Result>(shared: Shared<Item, Result>, items: readonly Item[]): Promise<readonly Result[]>
}

/** A task, and how it is run here. */
export interface Shared<Item, Result> {
  readonly task: Task
  readonly run: (items: readonly Item[]) => readonly Result[]
}

/** Members of a round between which messages are let in. */
const slice = 8

/**
 * This worker and a second one, which is started when it is first needed.
 *
 * @param start  starts the second worker; gives none where the machine has one core
 * @param pause  resolves after waiting messages were received
 */
export function openCrew(start: () => Second | undefined, pause: () => Promise<void>): Crew {
  const numbers = new WeakMap<Task, number>()
  const waiting = new Map<number, (reply: ShareDone) => void>()
  let second: Second | undefined | 'not started' = 'not started'
  let tasks = 0
  const lean = withoutLog()
  let shares = 0

  function opened(): Second | undefined {
    if (second !== 'not started') return second
    second = start()
    if (!second) return undefined
    second.onmessage = ({ data }) => {
      waiting.get(data.share)?.(data)
      waiting.delete(data.share)
    }
    second.onerror = () => {
      second = undefined
      for (const [share, settle] of waiting) settle({ share })
      waiting.clear()
    }
    return second
  }

  function numberOf(task: Task): number {
    const number = numbers.get(task) ?? ++tasks
    numbers.set(task, number)
    return number
  }

  return {
    async run<Item, Result>({ task, run }: Shared<Item, Result>, items: readonly Item[]) {
      const other = opened()
      if (!other || items.length < 4) {
        const results = run(items)
        await pause()
        return results
      }
      const theirs = items.filter((_, i) => isTheirs(i))
      const share = ++shares
      const reply = new Promise<ShareDone>((settle) => waiting.set(share, settle))
      other.postMessage({
        type: 'share',
        share,
        number: numberOf(task),
        task: { ...task, outlook: lean(task.outlook) },
        items: theirs,
      })
      const ours = run(items.filter((_, i) => !isTheirs(i)))[Symbol.iterator]()
      const { results } = await reply
      // What came back is what the same task gives here.
      const came = ((results as readonly Result[] | undefined) ?? run(theirs))[Symbol.iterator]()
      return items.map((_, i) => taken(isTheirs(i) ? came : ours))
    },
  }
}

const isTheirs = (item: number): boolean => Math.floor(item / 2) % 2 === 1

function taken<Result>(results: Iterator<Result>): Result {
  const next = results.next()
  if (next.done) throw new Error('Fewer results than items came back.')
  return next.value
}

/** Works rounds off with a crew. */
export async function sharedOut<Item, Result, Answer>(
  { run, rounds, total }: InRounds<Item, Result, Answer>,
  task: Task,
  crew: Crew,
  running: Running,
): Promise<Answer> {
  const under = rounds()
  let done = 0
  let next = under.next()
  while (!next.done) {
    const results: Result[] = []
    while (results.length < next.value.length) {
      if (running.cancelled()) throw stopped
      const items = next.value.slice(results.length, results.length + slice)
      results.push(...(await crew.run({ task, run }, items)))
      done += items.length
      running.onProgress(done / total)
    }
    next = under.next(results)
  }
  return next.value
}
