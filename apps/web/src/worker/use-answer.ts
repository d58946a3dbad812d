import { useEffect, useRef, useState } from 'preact/hooks'
import { type Desk, openDesk, type Port } from './desk.ts'
import type { AnswerTo, FromWorker, Issue, Question } from './protocol.ts'

export interface Asked<A> {
  readonly answer?: A | undefined
  /** True: the answer is to other inputs than those now on the page. */
  readonly old: boolean
  /** There while a run is under way; `share` 0 to 1, `long` once it took over a second. */
  readonly working?: { readonly share: number; readonly long: boolean } | undefined
  readonly issue?: Issue | undefined
  readonly cancel: () => void
}

interface Held<A> {
  readonly answer?: A
  readonly answerHash?: string
  readonly working?: { readonly share: number; readonly long: boolean }
  readonly issue?: Issue
}

const spawn = (): Port =>
  new Worker(new URL('./holdfast.worker.ts', import.meta.url), { type: 'module' }) as unknown as Port

/**
 * Asks the worker whenever the question changes, and keeps the last answer till the next is there.
 * Without a question there is no worker.
 */
export function useAnswer<K extends Question['kind']>(
  question: (Question & { readonly kind: K }) | undefined,
): Asked<AnswerTo[K]> {
  const [held, setHeld] = useState<Held<AnswerTo[K]>>({})
  const desk = useRef<Desk | null>(null)
  const [hash, setHash] = useState('')
  const asked = useRef(0)

  useEffect(() => {
    if (!question) return
    const opened = openDesk(spawn, (reply) => setHeld((before) => afterReply(before, reply)))
    desk.current = opened
    return () => {
      opened.close()
      desk.current = null
      setHeld(({ working: _working, ...kept }) => kept)
    }
  }, [question === undefined])

  useEffect(() => {
    if (!desk.current || !question) return
    asked.current += 1
    const turn = asked.current
    setHash(desk.current.ask(question))
    setHeld(({ issue: _issue, ...before }) => ({
      ...before,
      working: { share: 0, long: before.working?.long ?? false },
    }))
    const second = setTimeout(() => {
      if (turn === asked.current)
        setHeld((before) =>
          before.working ? { ...before, working: { ...before.working, long: true } } : before,
        )
    }, 1000)
    return () => clearTimeout(second)
  }, [question])

  const { answerHash, ...shown } = held
  return {
    ...shown,
    old: answerHash !== undefined && answerHash !== hash,
    cancel: () => desk.current?.cancel(),
  }
}

function afterReply<A>(before: Held<A>, reply: FromWorker): Held<A> {
  const { working, issue: _issue, ...kept } = before
  if (reply.type === 'progress')
    return { ...kept, working: { share: reply.share, long: working?.long ?? false } }
  if (reply.type === 'failed') return { ...kept, issue: reply.issue }
  // The worker answers a question of one kind with an answer of that kind; the protocol names them in pairs.
  const answered = { ...kept, answer: reply.answer as A, answerHash: reply.inputsHash }
  return reply.type === 'partial' ? { ...answered, working: working ?? { share: 0, long: false } } : answered
}
