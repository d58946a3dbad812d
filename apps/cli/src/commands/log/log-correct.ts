import { type Typed, typedOf } from '@holdfast/logbook'
import { type WhichLog, withRecord } from '../../record/with-record.ts'
import { refuse } from '../../refuse.ts'
import type { Terminal } from '../../terminal.ts'
import { drafted, writtenKinds } from './draft.ts'
import { dayOf } from './log-entry.ts'
import { type Answering, ask, store } from './store.ts'

export interface CorrectOptions extends WhichLog, Answering {
  readonly at?: string
  /** New texts by the names of their blanks. */
  readonly set: Typed
}

/**
 * Corrects an entry: the new one says what the old one said but for what is set anew. Both are kept.
 *
 * @returns the exit code
 */
export function logCorrect(id: string, options: CorrectOptions, terminal: Terminal): Promise<number> {
  return withRecord(options, async (record) => {
    const { entry, state, by } = await record.line(id)
    const { kind, system, at } = entry
    if (state !== 'holds') {
      const next = state === 'corrected' ? `Correct ${by}.` : `First: holdfast log bring-back ${id}`
      throw refuse('does-not-hold', 'Entry', `it was ${state} before`, 'An entry that holds.', next)
    }
    if (!writtenKinds.includes(kind)) {
      const next = 'Take it back with "holdfast log undo".'
      throw refuse('not-by-hand', 'Entry', `a ${kind} has no blanks`, 'One that a person filled in.', next)
    }
    if (Object.keys(options.set).length === 0 && options.at === undefined) {
      const accepted = 'What is to be set anew, such as --set value="6 mg/L NO3", or --at.'
      throw refuse('nothing-new', 'Correction', 'it changes nothing', accepted, 'Nothing is stored.')
    }
    const described = await record.describedOn(system, dayOf(options.at ?? at, new Date()))
    const moment = options.at ?? { at, precision: entry.precision }
    const draft = drafted(kind, { ...typedOf(entry), ...options.set }, moment, described.system)
    if ('questions' in draft) return ask(draft.questions, options, terminal)
    const parts = { workspace: described.workspace, system, kind, ...draft, replaces: id }
    await store(record, parts, 'Corrected', options, terminal)
    return 0
  })
}
