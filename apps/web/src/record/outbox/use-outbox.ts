import { useEffect, useState } from 'preact/hooks'
import { sendEntry } from './log-api.ts'
import { openOutbox, type Waiting } from './outbox.ts'

/** The outbox of this page. */
export const outbox = openOutbox(sendEntry)

/** Seconds until the next try where the log does not answer; from then on the last. */
const waits = [2, 5, 15, 60]

export interface Outgoing {
  readonly waiting: readonly Waiting[]
  /** True where the last sending found nobody. */
  readonly silent: boolean
  /** True where the browser has no room to keep it all. */
  readonly unkept: boolean
  readonly sendNow: () => Promise<void>
}

/** Watches the outbox and sends what is in it, again and again until the log has it. */
export function useOutbox(): Outgoing {
  const [waiting, setWaiting] = useState(outbox.waiting)
  const [failures, setFailures] = useState(0)
  const sendNow = async () => {
    const answered = await outbox.send()
    setFailures((before) => (answered ? 0 : before + 1))
  }
  useEffect(() => {
    const again = () => void sendNow()
    const refresh = () => outbox.refresh()
    const unwatch = outbox.watch(() => setWaiting(outbox.waiting()))
    again()
    addEventListener('online', again)
    addEventListener('storage', refresh)
    return () => {
      unwatch()
      removeEventListener('online', again)
      removeEventListener('storage', refresh)
    }
  }, [])
  useEffect(() => {
    if (failures === 0) return
    const seconds = waits[Math.min(failures, waits.length) - 1] ?? 60
    const timer = setTimeout(() => void sendNow(), 1000 * seconds)
    return () => clearTimeout(timer)
  }, [failures])
  return { waiting, silent: failures > 0, unkept: outbox.unkept(), sendNow }
}
