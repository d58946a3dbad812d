import { useEffect } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'
import { saidOf } from '../said.ts'
import type { Waiting } from './outbox.ts'
import type { Outgoing } from './use-outbox.ts'

interface NotYetOf {
  readonly outgoing: Outgoing
  /** Takes a refused entry back into the form. */
  readonly onMend: (waiting: Waiting) => void
  readonly onDrop: (waiting: Waiting) => void
}

/** What was written and is not in the log: where it is meanwhile, why, and what can be done. */
export function NotYet({ outgoing: { waiting, silent, unkept, sendNow }, onMend, onDrop }: NotYetOf) {
  const refused = waiting.filter((one) => one.refused !== undefined)
  const sent = waiting.length - refused.length
  const told = silent && sent > 0
  const sentence = told ? `Holdfast does not answer. ${whereItIs(sent, unkept)}` : ''
  useEffect(() => {
    if (sentence) speak(sentence)
  }, [sentence])
  useEffect(() => {
    if (refused.length > 0) speak(`Not logged. ${refused.flatMap((one) => one.refused ?? []).join(' ')}`)
  }, [refused.length])
  if (!told && refused.length === 0) return null
  return (
    <section class="not-yet" aria-label="Not in the log yet">
      {told && (
        <>
          <p>{sentence}</p>
          <ul class="plain">
            {waiting
              .filter((one) => one.refused === undefined)
              .map(({ entry }) => (
                <li key={entry.id}>{saidOf(entry)}</li>
              ))}
          </ul>
          <button type="button" class="key" onClick={() => void sendNow()}>
            Send now
          </button>
        </>
      )}
      {refused.map((one) => (
        <div key={one.entry.id}>
          <p class="issue">
            “{saidOf(one.entry)}” is not logged. {one.refused?.join(' ')}
          </p>
          <p class="acts">
            <button type="button" class="key" onClick={() => onMend(one)}>
              Mend it
            </button>
            <button type="button" class="key" onClick={() => onDrop(one)}>
              Throw it away
            </button>
          </p>
        </div>
      ))}
    </section>
  )
}

function whereItIs(count: number, unkept: boolean): string {
  const what = count === 1 ? 'This entry is' : `These ${count} entries are`
  return unkept
    ? `This browser has no room to keep ${count === 1 ? 'an entry' : 'them all'}: leave this page open until Holdfast answers.`
    : `${what} kept in this browser and sent again until the log has ${count === 1 ? 'it' : 'them'}.`
}
