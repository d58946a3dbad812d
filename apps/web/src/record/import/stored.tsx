import type { Entry } from '@holdfast/logbook'
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Described } from '../../shell/described.ts'
import { speak } from '../../shell/spoken.ts'
import { retractionOf } from '../log/writer.ts'
import { outbox, useOutbox } from '../outbox/use-outbox.ts'
import { freshInWords } from './in-words.ts'
import type { Done } from './use-import.ts'

interface StoredOf {
  readonly done: Done
  readonly described: Described
  readonly onLeave: () => void
}

/** What was stored, the way to the ledger, and the way back. */
export function Stored({ done: { preview, batch }, described, onLeave }: StoredOf) {
  const outgoing = useOutbox()
  const [acts, setActs] = useState<readonly Entry[]>([])
  const [isBack, setBack] = useState(false)
  const head = useRef<HTMLHeadingElement>(null)
  const words = freshInWords(preview.fresh)
  const waits = acts.some(({ id }) => outgoing.waiting.some(({ entry }) => entry.id === id))
  const sentence = isBack ? `Taken back: ${words}.` : `Stored: ${words}.`
  useEffect(() => {
    head.current?.focus()
  }, [])
  useEffect(() => {
    if (!waits) speak(sentence)
  }, [sentence, waits])

  const write = (entries: readonly Entry[]) => {
    for (const entry of entries) outbox.put({ entry, typed: {} })
    setActs(entries)
    setBack(!isBack)
    void outgoing.sendNow()
  }
  const inSystem = (id: string): Described => ({ ...described, system: { ...described.system, id } })
  const undo = () => write(preview.into.map((id) => retractionOf(inSystem(id), 'batch', batch)))
  const bringBack = () => write(acts.map(({ id, system }) => retractionOf(inSystem(system), 'entry', id)))
  return (
    <section class="view" aria-labelledby="stored-title">
      <h2 id="stored-title" ref={head} tabIndex={-1}>
        {sentence}
      </h2>
      {waits && outgoing.silent && (
        <p class="not-yet" role="alert">
          Holdfast does not answer. What you did last is kept in this browser and sent again until the log has
          it.
        </p>
      )}
      <p class="lead">
        {isBack
          ? 'None of it holds any more. It stays in the log as taken back, and the sheet can be brought in again.'
          : `From “${preview.fileName}”. It stands in the record under the import of today.`}
      </p>
      <ul class="plain">
        {preview.into.map((id) => (
          <li key={id}>
            <a
              class="to-ledger"
              href={`?${new URLSearchParams({ place: 'water', system: id })}#ledger-title`}
            >
              The ledger of {preview.systems.find((one) => one.id === id)?.name ?? described.system.name}
            </a>
          </li>
        ))}
      </ul>
      <p class="acts">
        <button type="button" class="key" onClick={isBack ? bringBack : undo}>
          {isBack ? 'Bring the whole import back' : 'Undo the whole import'}
        </button>
        <button type="button" class="key" onClick={onLeave}>
          Bring in another sheet
        </button>
      </p>
    </section>
  )
}
