import { factsAt, type OwnFact } from '@holdfast/logbook'
import { useCallback, useEffect, useState } from 'preact/hooks'
import { fetchOfKind } from '../../shell/system-data.ts'

export interface OwnFacts {
  /** By the ids of the facts; undefined until the log has answered. */
  readonly own: ReadonlyMap<string, OwnFact> | undefined
  /** Why they are not known, in words. */
  readonly trouble: string
  readonly refresh: () => void
}

/** As many as the server gives at once, far more than anyone sets. */
const most = 1000
/** Set for any day, and known at any time. */
const endOfTime = '9999-12-31'

/** The values that the keeper set for a system, without the rest of its log. */
export function useOwnFacts(system: string): OwnFacts {
  const [own, setOwn] = useState<OwnFacts['own']>()
  const [trouble, setTrouble] = useState('')
  const refresh = useCallback(() => {
    fetchOfKind(system, 'fact-override', most).then(
      (lines) => {
        const holding = lines.flatMap(({ entry, state }) => (state === 'holds' ? [entry] : []))
        const asReceived = holding.toSorted((a, b) => (a.knownAt < b.knownAt ? -1 : 1))
        setOwn(factsAt(asReceived, endOfTime, endOfTime))
        setTrouble('')
      },
      (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)),
    )
  }, [system])
  useEffect(refresh, [refresh])
  return { own, trouble, refresh }
}
