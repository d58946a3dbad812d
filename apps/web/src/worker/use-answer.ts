import { useEffect, useState } from 'preact/hooks'
import type { Asked } from './asked.ts'
import { inputsHash } from './inputs-hash.ts'
import type { Answer, Question } from './protocol.ts'
import { useDesk } from './use-desk.ts'

/**
 * Asks whenever the question changes; the last answer stays till the next is there.
 *
 * @param question  nothing where nothing is asked yet
 * @param taken  what the view takes of an answer
 */
export function useAnswer<Taken>(
  question: Question | undefined,
  taken: (answer: Answer) => Taken | undefined,
): Asked<Taken> {
  const [held, setHeld] = useState<{ readonly answer: Taken; readonly hash: string } | undefined>()
  const desk = useDesk((told, hash) => {
    const answer = taken(told)
    if (answer !== undefined) setHeld({ answer, hash })
  })
  useEffect(() => {
    if (question) desk.ask(question)
  }, [question])
  return {
    answer: held?.answer,
    old: held !== undefined && question !== undefined && held.hash !== inputsHash(question),
    ...desk.state,
    cancel: desk.cancel,
  }
}
