import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { OutlookAnswer } from '../../worker/answers.ts'
import type { Asked } from '../../worker/asked.ts'
import { inputsHash } from '../../worker/inputs-hash.ts'
import type { Question } from '../../worker/protocol.ts'
import { useDesk } from '../../worker/use-desk.ts'
import { firstMembers } from '../question.ts'
import { best, type Held, keep, nextToAsk } from './held.ts'

export type OutlookAsked = Question & { readonly kind: 'outlook' }

export interface OutlookOfLevers {
  readonly now: Asked<OutlookAnswer>
  /** Under today's husbandry. */
  readonly today: Asked<OutlookAnswer>
  /** Under each variant that is kept, in their order. */
  readonly kept: readonly (OutlookAnswer | undefined)[]
}

/** The latest answers to today's husbandry and to the levers, though the page has moved on since. */
interface Last {
  readonly today?: OutlookAnswer
  readonly levers?: OutlookAnswer
}

const none: readonly OutlookAsked[] = []

/**
 * The outlook for today's husbandry, for the levers as they stand, and for variants that are kept: rough answers
 * keep up with a finger, and the whole ensemble fills them in when it rests. The worker keeps the past, which
 * no lever moves.
 */
export function useOutlook(base: OutlookAsked, asked: OutlookAsked, variants = none): OutlookOfLevers {
  const [held, setHeld] = useState<readonly Held[]>([])
  const [last, setLast] = useState<Last>({})
  const wanted = useMemo(() => [base, asked, ...variants].map(namedByHash), [base, asked, variants])
  const latest = useRef(wanted)
  latest.current = wanted
  const desk = useDesk((answer, hash) => {
    if (!('outlook' in answer)) return
    const hashes = latest.current.map((one) => one.hash)
    const [today, , ...kept] = hashes
    setHeld((before) => keep(before, { answer, hash }, hashes))
    if (hash === today) setLast((before) => ({ ...before, today: answer }))
    else if (!kept.includes(hash)) setLast((before) => ({ ...before, levers: answer }))
  })

  const sent = useRef<string | undefined>(undefined)
  // Before the next frame is drawn, which a finger would wait for.
  useLayoutEffect(() => {
    const next = nextToAsk(held, wanted)
    if (next === undefined || next.hash === sent.current) return
    sent.current = next.hash
    desk.ask({ ...next.question, firstMembers })
  }, [held, wanted])
  const moved = asked !== base
  useEffect(() => {
    // Levers that go back to today leave nothing of where they were.
    if (!moved) setLast(({ today }) => (today ? { today } : {}))
  }, [moved])

  const [ofToday, ofLevers, ...kept] = wanted.map(({ hash }) => best(held, hash)?.answer)
  const shown = (answer: OutlookAnswer | undefined, before: OutlookAnswer | undefined) => ({
    answer: answer ?? before,
    old: answer === undefined && before !== undefined,
    ...desk.state,
    cancel: desk.cancel,
  })
  return {
    now: shown(ofLevers, moved ? last.levers : last.today),
    today: shown(ofToday, last.today),
    kept,
  }
}

/** A long log is not hashed again for every question that it is part of. */
const hashes = new WeakMap<OutlookAsked, string>()

function namedByHash(question: OutlookAsked) {
  const hash = hashes.get(question) ?? inputsHash(question)
  hashes.set(question, hash)
  return { question, hash, members: question.outlook.members }
}
