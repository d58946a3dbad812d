import { named } from '@holdfast/facts/names'
import { describedOn, JournalSearch, journalPage, type Logbook, lineOf } from '@holdfast/logbook'
import { refuse } from '../refuse.ts'
import type { Record } from './record.ts'

/** A log that this program opened itself. */
export function folderRecord(logbook: Logbook): Record {
  const search = new JournalSearch(logbook, named)
  return {
    systems: () => logbook.systems(),
    async describedOn(id, day) {
      const system = await describedOn(logbook, id, day)
      if (system !== undefined) return { workspace: logbook.workspace, system }
      const next = 'Describe it in a file and run "holdfast system add FILE".'
      throw refuse(
        'not-described',
        'System',
        `"${id}" is not described`,
        'A system with a description.',
        next,
      )
    },
    add: (entries) => logbook.append(entries),
    page: (question) => journalPage(logbook, question, search),
    async line(id) {
      const line = await lineOf(logbook, id)
      if (line !== undefined) return line
      const accepted = 'The id of an entry, as "holdfast log list" gives it.'
      throw refuse('no-entry', 'Entry', `"${id}" is not in this log`, accepted, 'Nothing was changed.')
    },
  }
}
