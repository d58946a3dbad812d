import { composeEntry, type JournalLine, sayEntry } from '@holdfast/logbook'
import type { Record } from '../../record/record.ts'
import { type WhichLog, withRecord } from '../../record/with-record.ts'
import { refuse } from '../../refuse.ts'
import type { Terminal } from '../../terminal.ts'
import { writer } from '../../writer.ts'
import type { Answering } from './store.ts'

type Options = WhichLog & Answering

/** Takes an entry back with its corrections. Nothing is deleted. */
export function logUndo(id: string, options: Options, terminal: Terminal): Promise<void> {
  return withRecord(options, async (record) => {
    const line = await record.line(id)
    if (line.state === 'taken back') {
      const next = `To bring it back: holdfast log bring-back ${id}`
      throw refuse('taken-back', 'Entry', 'it was taken back before', 'One that was not.', next)
    }
    const retraction = await retract(record, line, id)
    terminal.out(
      options.json
        ? JSON.stringify({ id, taken_back_by: retraction })
        : `Taken back: ${sayEntry(line.entry)}\nTo bring it back: holdfast log bring-back ${id}`,
    )
  })
}

/** Takes back what took an entry back: the entry holds again, and with it all that went in that step. */
export function logBringBack(id: string, options: Options, terminal: Terminal): Promise<void> {
  return withRecord(options, async (record) => {
    const line = await record.line(id)
    if (line.state !== 'taken back' || line.by === undefined)
      throw refuse(
        'not-taken-back',
        'Entry',
        'it was not taken back',
        'One that was.',
        'Nothing was changed.',
      )
    const retraction = await retract(record, line, line.by)
    terminal.out(
      options.json
        ? JSON.stringify({ id, brought_back_by: retraction })
        : `Holds again: ${sayEntry(line.entry)}`,
    )
  })
}

/** Stores the retraction of an entry, on the day of the line. @returns its id */
async function retract(record: Record, { entry }: JournalLine, of: string): Promise<string> {
  const { workspace, system } = entry
  const about = {
    workspace,
    system,
    kind: 'retraction',
    at: entry.at.slice(0, 10),
    precision: 'day',
  } as const
  const body = { of: 'entry', id: of } as const
  const retraction = composeEntry({ ...about, ...writer, body }, new Date())
  await record.add([retraction])
  return retraction.id
}
