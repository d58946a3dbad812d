import { useEffect, useState } from 'preact/hooks'
import type { LedgerAnswer } from '../../worker/answers.ts'
import type { Asked } from '../../worker/asked.ts'
import { inputsHash } from '../../worker/inputs-hash.ts'
import type { Question } from '../../worker/protocol.ts'
import { useDesk } from '../../worker/use-desk.ts'

/** Asks for the ledger whenever the question changes; the last one stays till the next is there. */
export function useLedger(question: Question & { readonly kind: 'ledger' }): Asked<LedgerAnswer> {
  const [held, setHeld] = useState<{ readonly answer: LedgerAnswer; readonly hash: string } | undefined>()
  const desk = useDesk((answer, hash) => {
    if ('ledger' in answer) setHeld({ answer, hash })
  })
  useEffect(() => desk.ask(question), [question])
  return {
    answer: held?.answer,
    old: held !== undefined && held.hash !== inputsHash(question),
    ...desk.state,
    cancel: desk.cancel,
  }
}
