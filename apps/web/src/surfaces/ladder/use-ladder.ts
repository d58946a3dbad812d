import type { LadderAnswer } from '@holdfast/ladder'
import { useEffect, useState } from 'preact/hooks'
import type { Asked } from '../../worker/asked.ts'
import { inputsHash } from '../../worker/inputs-hash.ts'
import type { Question } from '../../worker/protocol.ts'
import { useDesk } from '../../worker/use-desk.ts'

/** Asks for the ladder whenever the question changes; the last one stays till the next is there. */
export function useLadder(question: Question & { readonly kind: 'ladder' }): Asked<LadderAnswer> {
  const [held, setHeld] = useState<{ readonly answer: LadderAnswer; readonly hash: string } | undefined>()
  const desk = useDesk((answer, hash) => {
    if ('ladder' in answer) setHeld({ answer: answer.ladder, hash })
  })
  useEffect(() => desk.ask(question), [question])
  return {
    answer: held?.answer,
    old: held !== undefined && held.hash !== inputsHash(question),
    ...desk.state,
    cancel: desk.cancel,
  }
}
