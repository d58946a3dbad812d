import type { Entry } from '@holdfast/logbook'
import { useEffect } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'
import type { Outgoing } from '../outbox/use-outbox.ts'

/** What was done last. */
export interface Act {
  readonly did: 'logged' | 'corrected' | 'taken back' | 'brought back'
  /** The entry that was written for it. */
  readonly entry: Entry
  /** Written with it for other systems: an import may tell of several. */
  readonly elsewhere?: readonly Entry[]
  /** What it is about, in a sentence. */
  readonly says: string
}

const done: Readonly<Record<Act['did'], string>> = {
  logged: 'Logged',
  corrected: 'Corrected',
  'taken back': 'Taken back',
  'brought back': 'Brought back',
}

interface LastActOf {
  readonly act: Act | undefined
  readonly outgoing: Outgoing
  readonly onUndo: (act: Act) => void
}

/** Says what was done last, and takes it back with one tap. */
export function LastAct({ act, outgoing, onUndo }: LastActOf) {
  const waiting = outgoing.waiting.find(({ entry }) => entry.id === act?.entry.id)
  const waits = waiting !== undefined
  const sentence = act ? `${done[act.did]}: ${act.says}` : ''
  useEffect(() => {
    if (sentence && !waits) speak(sentence)
  }, [sentence, waits])
  // What the log refuses is told below, with its reasons.
  if (act === undefined || waiting?.refused !== undefined) return null
  return (
    <p class="last-act">
      <span>{waits ? `Not in the log yet: ${act.says}` : sentence}</span>
      <button type="button" class="key" onClick={() => onUndo(act)}>
        {act.did === 'taken back' ? 'Bring it back' : 'Undo'}
      </button>
    </p>
  )
}
