import { acceptedPlan, type Wishes } from '@holdfast/crew-plan'
import { type BodyOf, momentAt } from '@holdfast/logbook'
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Act } from '../../record/log/last-act.tsx'
import { entryOf, retractionOf } from '../../record/log/writer.ts'
import { type Outgoing, outbox, useOutbox } from '../../record/outbox/use-outbox.ts'
import { saidOf } from '../../record/said.ts'
import { fetchOfKind, type SystemData } from '../../shell/system-data.ts'
import { type KeptPlan, keptPlan, lastPlan } from './kept.ts'
import type { Plan } from './plan.tsx'

/** Plans among which one that was not taken back is looked for. */
const looked = 20

export interface Keeping {
  /** The plan that stands in the log. */
  readonly kept: KeptPlan | undefined
  readonly trouble: string
  readonly last: Act | undefined
  readonly outgoing: Outgoing
  readonly keep: (plan: Plan, wishes: Wishes) => void
  /** Whether it is the one that is kept, or on its way into the log. */
  readonly isKept: (plan: Plan) => boolean
  readonly takeBack: () => void
  readonly undo: (act: Act) => void
}

/** Keeps a plan in the log, as the terminal does, and knows the one that is kept. */
export function useKeptPlan(data: SystemData): Keeping {
  const outgoing = useOutbox()
  const [found, setFound] = useState<ReturnType<typeof lastPlan>>()
  const [trouble, setTrouble] = useState('')
  const [last, setLast] = useState<Act | undefined>()
  const { id, timeZone } = data.system
  const refresh = () => {
    fetchOfKind(id, 'crew-plan', looked).then(
      (lines) => {
        setFound(lastPlan(lines))
        setTrouble('')
      },
      (error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)),
    )
  }
  useEffect(refresh, [id, data])
  // Asked anew when the log has taken something.
  const count = outgoing.waiting.length
  const before = useRef(count)
  useEffect(() => {
    if (count < before.current) refresh()
    before.current = count
  }, [count])
  const onItsWay = outgoing.waiting.flatMap(({ entry }) => (entry.kind === 'crew-plan' ? [entry.body] : []))
  const write = (act: Act) => {
    outbox.put({ entry: act.entry, typed: {} })
    setLast(act)
    void outgoing.sendNow()
  }
  const retract = (did: Act['did'], entry: string, says: string) =>
    write({ did, entry: retractionOf(data, 'entry', entry), says })
  return {
    kept: found && keptPlan(found, data.events),
    trouble,
    last,
    outgoing,
    keep: (plan, wishes) => {
      const body = acceptedPlan(plan, wishes, data.asOf)
      const entry = entryOf(data, { kind: 'crew-plan', body, moment: momentAt(new Date(), timeZone) })
      write({ did: 'logged', entry, says: saidOf(entry) })
    },
    isKept: (plan) => {
      const movesOf = ({ steps, leave }: Pick<BodyOf<'crew-plan'>, 'steps' | 'leave'>): string =>
        JSON.stringify([steps, leave])
      const moves = movesOf(acceptedPlan(plan, {}, data.asOf))
      return [...onItsWay, ...(found ? [found.body] : [])].some((body) => movesOf(body) === moves)
    },
    takeBack: () => {
      if (found) retract('taken back', found.id, 'the crew plan')
    },
    undo: ({ did, entry, says }) =>
      retract(did === 'taken back' ? 'brought back' : 'taken back', entry.id, says),
  }
}
