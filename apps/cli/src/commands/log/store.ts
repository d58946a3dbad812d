import {
  type BlankQuestion,
  composeEntry,
  type EntryKind,
  type EntryParts,
  sayEntry,
} from '@holdfast/logbook'
import type { Record } from '../../record/record.ts'
import type { Terminal } from '../../terminal.ts'
import { writer } from '../../writer.ts'

/** How a command answers. */
export interface Answering {
  readonly json?: true
}

type Parts = Omit<EntryParts<EntryKind>, 'by' | 'device'>

/** Stores an entry and says it. */
export async function store(
  record: Record,
  parts: Parts,
  verb: string,
  { json }: Answering,
  terminal: Terminal,
): Promise<void> {
  const entry = composeEntry({ ...parts, ...writer }, new Date())
  await record.add([entry])
  const { id, system, at, kind } = entry
  const says = sayEntry(entry)
  terminal.out(
    json
      ? JSON.stringify({ id, system, kind, at, says, ...(parts.replaces && { replaces: parts.replaces }) })
      : `${verb} ${day(at)}: ${says}\nTo take it back: holdfast log undo ${id}`,
  )
}

/** Asks what must be answered before anything is stored. @returns the exit code */
export function ask(questions: readonly BlankQuestion[], { json }: Answering, terminal: Terminal): 2 {
  const asked = questions.map(({ blank, question, options }) =>
    [question, ...options.map(({ value, words }) => `  --${blank} "${value}": ${words}`)].join('\n'),
  )
  terminal.out(
    json
      ? JSON.stringify({ questions, stored: false }, null, 2)
      : [...asked, 'Nothing is stored. Give one of these in place of what was typed.'].join('\n'),
  )
  return 2
}

/** A moment without its offset and zone: the clock beside the tank. */
export const day = (at: string): string => (at.length === 10 ? at : `${at.slice(0, 10)} ${at.slice(11, 16)}`)
