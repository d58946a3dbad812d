import type { Entry } from '@holdfast/logbook'
import { useEffect } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'
import type { Outgoing } from '../outbox/use-outbox.ts'

/** What was done last. */
export interface Act {
  readonly did: 'logged' | 'corrected' | 'taken back' | 'brought back'
  /** The entry that was written for it. */
  readonly entry: Entry
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

/** Says what was done last as soon as the log has it, and takes it back with one tap. */
export function LastAct({ act, outgoing, onUndo }: LastActOf) {
  const waits = outgoing.waiting.find(({ entry }) => entry.id === act?.entry.id)
  const sentence = act && !waits ? `${done[act.did]}: ${act.says}` : ''
  useEffect(() => {
    if (sentence) speak(sentence)
  }, [sentence])
  if (act === undefined || sentence === '') return <p class="last-act" />
  return (
    <p class="last-act">
      <span>{sentence}</span>
      <button type="button" class="key" onClick={() => onUndo(act)}>
        {act.did === 'taken back' ? 'Bring it back' : 'Undo'}
      </button>
    </p>
  )
}
