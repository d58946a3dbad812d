import { type EntryKind, isDate, momentAt, type Typed } from '@holdfast/logbook'
import { systemOf, type WhichLog, withRecord } from '../../record/with-record.ts'
import type { Terminal } from '../../terminal.ts'
import { drafted, filledInOrder } from './draft.ts'
import { type Answering, ask, store } from './store.ts'

export interface LogOptions extends WhichLog, Answering {
  /** When it was so; now where it is left out. */
  readonly at?: string
}

/**
 * Logs one entry of a kind.
 *
 * @param named  texts by the names of their blanks
 * @param texts  further ones, for the blanks that must be filled in, in their order
 * @returns the exit code
 */
export function logEntry(
  kind: EntryKind,
  named: Typed,
  texts: readonly string[],
  options: LogOptions,
  terminal: Terminal,
): Promise<number> {
  return withRecord(options, async (record) => {
    const id = await systemOf(record, options.system)
    const now = new Date()
    const { workspace, system } = await record.describedOn(id, dayOf(options.at, now))
    const typed = filledInOrder(kind, named, texts, system)
    const draft = drafted(kind, typed, options.at ?? momentAt(now, system.timeZone), system)
    if ('questions' in draft) return ask(draft.questions, options, terminal)
    await store(record, { workspace, system: id, kind, ...draft }, 'Logged', options, terminal)
    return 0
  })
}

/** The day whose description is needed; what is no date is refused when it is read. */
export function dayOf(at: string | undefined, now: Date): string {
  const said = at?.trim().slice(0, 10)
  return said !== undefined && isDate(said) ? said : now.toISOString().slice(0, 10)
}
