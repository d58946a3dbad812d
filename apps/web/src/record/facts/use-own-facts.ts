import type { OwnFact } from '@holdfast/logbook'
import { useCallback, useEffect, useState } from 'preact/hooks'
import { fetchSystem } from '../../shell/system-data.ts'

export interface OwnFacts {
  /** By the ids of the facts; undefined until the log has answered. */
  readonly own: ReadonlyMap<string, OwnFact> | undefined
  /** Why they are not known, in words. */
  readonly trouble: string
  readonly refresh: () => void
}

/** The values that the keeper set for a system. */
export function useOwnFacts(system: string): OwnFacts {
  const [own, setOwn] = useState<OwnFacts['own']>()
  const [trouble, setTrouble] = useState('')
  const refresh = useCallback(() => {
    fetchSystem(system).then(
      ({ ownFacts }) => {
        setOwn(new Map(ownFacts.map((one) => [one.fact, one])))
        setTrouble('')
      },
      (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)),
    )
  }, [system])
  useEffect(refresh, [refresh])
  return { own, trouble, refresh }
}
