import { useEffect, useState } from 'preact/hooks'
import type { OutlookAnswer } from '../../worker/answers.ts'
import type { Asked } from '../../worker/asked.ts'
import { inputsHash } from '../../worker/inputs-hash.ts'
import type { Question } from '../../worker/protocol.ts'
import { useDesk } from '../../worker/use-desk.ts'
import { firstMembers } from '../question.ts'
import { best, type Held, keep } from './held.ts'

type OutlookAsked = Question & { readonly kind: 'outlook' }

export interface OutlookOfLevers {
  readonly now: Asked<OutlookAnswer>
  /** Under today's husbandry, where that is not what is asked. */
  readonly today: OutlookAnswer | undefined
}

/**
 * The outlook for the levers as they stand: rough answers keep up with a finger, and the whole ensemble fills
 * them in when it rests. The worker keeps the past, which no lever moves.
 */
export function useOutlook(base: OutlookAsked, asked: OutlookAsked): OutlookOfLevers {
  const [held, setHeld] = useState<readonly Held[]>([])
  const desk = useDesk((answer, hash) => {
    if ('outlook' in answer) setHeld((before) => keep(before, { answer, hash }, inputsHash(base)))
  })
  useEffect(() => desk.ask({ ...asked, firstMembers }), [asked])
  const found = best(held, inputsHash(asked))
  return {
    now: {
      answer: found?.answer ?? held.at(-1)?.answer,
      old: found === undefined && held.length > 0,
      ...desk.state,
      cancel: desk.cancel,
    },
    today: asked === base ? undefined : best(held, inputsHash(base))?.answer,
  }
}
