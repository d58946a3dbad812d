import type { EntryKind, JournalLine } from '@holdfast/logbook'
import { systemOf, type WhichLog, withRecord } from '../../record/with-record.ts'
import { table } from '../../table.ts'
import type { Terminal } from '../../terminal.ts'
import { type Answering, day } from './store.ts'

export interface ListOptions extends WhichLog, Answering {
  readonly kind?: EntryKind
  readonly from?: string
  readonly to?: string
  readonly words?: string
  readonly before?: string
  readonly limit: number
}

/** A page of the journal, the latest day first. */
export function logList(options: ListOptions, terminal: Terminal): Promise<void> {
  return withRecord(options, async (record) => {
    const system = await systemOf(record, options.system)
    const { kind, from, to, words, before, limit } = options
    const page = await record.page({
      system,
      limit,
      ...(kind !== undefined && { kind }),
      ...(from !== undefined && { from }),
      ...(to !== undefined && { to }),
      ...(words !== undefined && { words }),
      ...(before !== undefined && { before }),
    })
    if (options.json) {
      terminal.out(JSON.stringify({ system, ...page, next: page.next ?? null }, null, 2))
      return
    }
    const columns = ['Day', 'What', 'State', 'Id'].map((heading) => ({ heading }))
    const lines = page.lines.length === 0 ? 'Nothing is found.' : table(columns, page.lines.map(row))
    const more = page.next === undefined ? [] : [`There are more: --before ${page.next}`]
    terminal.out([lines, ...more].join('\n'))
  })
}

function row({ entry, state, rivals, says }: JournalLine): string[] {
  const others = rivals.length === 0 ? '' : `, ${rivals.length} other corrections`
  // What a keeper wrote may hold lines of its own.
  return [day(entry.at), says.replaceAll(/\s+/g, ' ').slice(0, 100), state + others, entry.id]
}
