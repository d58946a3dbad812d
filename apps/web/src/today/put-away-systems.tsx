import { composeEntry, type Entry } from '@holdfast/logbook'
import { useState } from 'preact/hooks'
import { forgetPutAway, type PutAway, putAway } from '../record/letter/put-away.ts'
import { today } from '../record/log/when.ts'
import { writer } from '../record/log/writer.ts'
import { NotYet } from '../record/outbox/not-yet.tsx'
import { outbox, useOutbox } from '../record/outbox/use-outbox.ts'

/** Systems that were put away in this browser: their logs are kept, and one tap brings them back. */
export function PutAwaySystems() {
  const [systems, setSystems] = useState(putAway)
  const outgoing = useOutbox()
  const bringBack = (one: PutAway) => {
    for (const entry of broughtBack(one)) outbox.put({ entry, typed: {} })
    forgetPutAway(one.id)
    setSystems(putAway())
    void outgoing.sendNow().then(() => location.reload())
  }
  return (
    <>
      <NotYet outgoing={outgoing} onMend={() => undefined} onDrop={({ entry }) => outbox.drop(entry.id)} />
      {systems.map((one) => (
        <p class="last-act" key={one.id}>
          <span>Put away: {one.name}. Its log is kept.</span>
          <button type="button" class="key" onClick={() => bringBack(one)}>
            Bring it back
          </button>
        </p>
      ))}
    </>
  )
}

/** Taking back a retraction brings back what it took. */
const broughtBack = ({ workspace, id, timeZone, retractions }: PutAway): readonly Entry[] =>
  retractions.map((of): Entry => {
    const at = today(timeZone, new Date())
    const body = { of: 'entry', id: of } as const
    const parts = {
      workspace,
      system: id,
      kind: 'retraction',
      at,
      precision: 'day',
      body,
      ...writer,
    } as const
    return composeEntry(parts, new Date())
  })
