import { useEffect, useState } from 'preact/hooks'
import type { OutlookAnswer } from '../../worker/answers.ts'
import type { Asked } from '../../worker/asked.ts'
import { inputsHash } from '../../worker/inputs-hash.ts'
import type { Question } from '../../worker/protocol.ts'
import { useDesk } from '../../worker/use-desk.ts'
import { coarseMembers } from '../question.ts'
import { best, type Held, keep } from './held.ts'

type OutlookAsked = Question & { readonly kind: 'outlook' }

export interface OutlookOfLevers {
  readonly now: Asked<OutlookAnswer>
  /** Under today's husbandry, where that is not what is asked. */
  readonly today: OutlookAnswer | undefined
}

/**
 * The outlook for the levers as they stand. One worker gives rough answers that keep up with a finger,
 * another the whole ensemble once it rests; both keep the past they worked out, so neither is broken off.
 */
export function useOutlook(base: OutlookAsked, asked: OutlookAsked, moving: boolean): OutlookOfLevers {
  const [held, setHeld] = useState<readonly Held[]>([])
  const hear = (answer: object, hash: string) => {
    if ('outlook' in answer)
      setHeld((before) => keep(before, { answer: answer as OutlookAnswer, hash }, inputsHash(base)))
  }
  const rough = useDesk('let end', hear)
  const whole = useDesk('let end', hear)
  useEffect(() => rough.ask({ ...asked, outlook: { ...asked.outlook, members: coarseMembers } }), [asked])
  const hash = inputsHash(asked)
  const found = best(held, hash)
  const roughThere = found !== undefined
  // The whole ensemble waits while the finger moves, and for the rough answer, which it would only slow down.
  useEffect(() => {
    if (!moving && roughThere) whole.ask(asked)
  }, [asked, moving, roughThere])

  const working = found ? whole.state.working : (rough.state.working ?? whole.state.working)
  return {
    now: {
      answer: found?.answer ?? held.at(-1)?.answer,
      old: found === undefined && held.length > 0,
      working,
      issue: rough.state.issue ?? whole.state.issue,
      cancel: () => {
        rough.cancel()
        whole.cancel()
      },
    },
    today: asked === base ? undefined : best(held, inputsHash(base))?.answer,
  }
}
