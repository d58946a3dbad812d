import { pairs } from '@holdfast/ecosystem'
import { type Running, stopped } from './running.ts'

/**
 * Work of an ensemble, of which each round rests on the one before. What a round yields may be run in any
 * order, in shares of any size and in any number of workers: the answer has the same bits.
 */
export interface InRounds<Item, Result, Answer> {
  /** Runs some items side by side. */
  readonly run: (items: readonly Item[]) => readonly Result[]
  /** Yields the items of a round, is given what they came to, in their order, and ends with the answer. */
  readonly rounds: () => Generator<readonly Item[], Answer, readonly Result[]>
  /** Items of all rounds together. */
  readonly total: number
}

/** Works all rounds off here and now. */
export function workedOff<Item, Result, Answer>(
  { run, rounds, total }: InRounds<Item, Result, Answer>,
  running: Running,
): Answer {
  let done = 0
  const under = rounds()
  let next = under.next()
  while (!next.done) {
    const results = pairs(next.value).flatMap((pair) => {
      if (running.cancelled()) throw stopped
      const came = run(pair)
      done += pair.length
      running.onProgress(done / total)
      return came
    })
    next = under.next(results)
  }
  return next.value
}
