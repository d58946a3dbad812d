import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks'
import { afterReply, begun, type DeskState, overASecond } from './asked.ts'
import { type Desk, openDesk } from './desk.ts'
import type { Answer, Question } from './protocol.ts'
import { spawn } from './spawn.ts'

export interface DeskInUse {
  readonly state: DeskState
  readonly ask: (question: Question) => void
  readonly cancel: () => void
}

/** A line of a view's own to the worker of the page, ended with the view. */
export function useDesk(onAnswer: (answer: Answer, inputsHash: string) => void): DeskInUse {
  const [state, setState] = useState<DeskState>({})
  const desk = useRef<Desk | null>(null)
  const hear = useRef(onAnswer)
  hear.current = onAnswer
  const second = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)

  // Open before any effect of the view asks.
  useLayoutEffect(() => {
    const opened = openDesk(spawn, (reply) => {
      setState((before) => afterReply(before, reply))
      if (reply.type === 'done' || reply.type === 'partial') hear.current(reply.answer, reply.inputsHash)
    })
    desk.current = opened
    return () => {
      clearTimeout(second.current)
      opened.close()
    }
  }, [])

  return useMemo(
    () => ({
      state,
      ask: (question) => {
        desk.current?.ask(question)
        setState(begun)
        clearTimeout(second.current)
        second.current = setTimeout(() => setState(overASecond), 1000)
      },
      cancel: () => desk.current?.cancel(),
    }),
    [state],
  )
}
