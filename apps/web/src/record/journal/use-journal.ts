import type { JournalLine } from '@holdfast/logbook'
import { useCallback, useEffect, useRef, useState } from 'preact/hooks'
import { fetchLines } from '../outbox/log-api.ts'

/** Lines fetched at a time. */
const page = 50

export interface Journal {
  /** Undefined until the log has answered once. */
  readonly lines: readonly JournalLine[] | undefined
  readonly more: boolean
  /** Why the list is not that of now, in words. */
  readonly trouble: string
  readonly refresh: () => void
  readonly older: () => void
}

/** The journal of a system, the latest day first, as far back as was asked for. */
export function useJournal(system: string, words: string): Journal {
  const [answer, setAnswer] = useState<{ lines: readonly JournalLine[]; more: boolean } | undefined>()
  const [trouble, setTrouble] = useState('')
  const [wanted, setWanted] = useState(page)
  const asked = useRef(0)
  const refresh = useCallback(() => {
    asked.current += 1
    const mine = asked.current
    fetchLines(system, { words, limit: wanted }).then(
      (next) => {
        // An answer to an older question is dropped.
        if (mine !== asked.current) return
        setAnswer(next)
        setTrouble('')
      },
      (error: unknown) => {
        if (mine === asked.current) setTrouble(error instanceof Error ? error.message : String(error))
      },
    )
  }, [system, words, wanted])
  useEffect(refresh, [refresh])
  // What another device wrote is there when one comes back to the page.
  useEffect(() => {
    const look = () => document.visibilityState === 'visible' && refresh()
    addEventListener('online', look)
    document.addEventListener('visibilitychange', look)
    return () => {
      removeEventListener('online', look)
      document.removeEventListener('visibilitychange', look)
    }
  }, [refresh])
  return {
    lines: answer?.lines,
    more: answer?.more ?? false,
    trouble,
    refresh,
    older: () => setWanted(wanted + 2 * page),
  }
}
