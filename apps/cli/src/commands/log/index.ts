import { blanksOf, type EntryKind, kinds, type Typed } from '@holdfast/logbook'
import { type Command, Option } from 'commander'
import { date, namedText, wholeNumber } from '../../options.ts'
import type { Terminal } from '../../terminal.ts'
import { writtenKinds } from './draft.ts'
import { logCorrect } from './log-correct.ts'
import { logEntry } from './log-entry.ts'
import { logList } from './log-list.ts'
import { logBringBack, logUndo } from './log-undo.ts'

type NewCommand = (parent: Command, name: string, says: string) => Command

/** `holdfast log`: a command for each kind of entry, made of its blanks, and those that work on the journal. */
export function logCommands(
  holdfast: Command,
  command: NewCommand,
  terminal: Terminal,
  end: (code: number) => void,
): void {
  const log = holdfast.command('log').description('Log readings, feedings and all else; list, correct, undo.')
  const onLog = (name: string, says: string): Command =>
    command(log, name, says)
      .option('--server <url>', 'a Holdfast that runs, such as http://localhost:4173 (else HOLDFAST_SERVER)')
      .option('--system <id>', 'which system; needed when there are several')

  for (const kind of writtenKinds) ofKind(onLog, kind, terminal, end)

  onLog('list', 'The journal: every entry with what became of it, the latest day first.')
    .addOption(new Option('--kind <kind>', 'one kind only').choices(kinds.map(({ name }) => name)))
    .option('--from <date>', 'first day', date)
    .option('--to <date>', 'last day', date)
    .option('--words <words>', 'only entries that hold each of these words')
    .option('--before <mark>', 'goes on where the list before ended')
    .option('--limit <count>', 'how many at most', wholeNumber(1, 1000), 30)
    .action((options) => logList(options, terminal))
  onLog('correct <id>', 'Put a new entry in the place of one; both are kept.')
    .option('--set <blank=text>', 'text of a blank, anew; repeat for each', namedText, {})
    .option('--at <moment>', 'when it was so')
    .action(async (id, options) => end(await logCorrect(id, options, terminal)))
  onLog('undo <id>', 'Take an entry back; nothing is deleted.').action((id, options) =>
    logUndo(id, options, terminal),
  )
  onLog('bring-back <id>', 'Let an entry hold again that was taken back.').action((id, options) =>
    logBringBack(id, options, terminal),
  )
}

function ofKind(
  onLog: (name: string, says: string) => Command,
  kind: EntryKind,
  terminal: Terminal,
  end: (code: number) => void,
): void {
  const blanks = blanksOf(kind)
  const title = kinds.find(({ name }) => name === kind)?.title ?? kind
  const required = blanks.filter((blank) => blank.required).map(({ name }) => `<${name}>`)
  const made = onLog(`${kind} [texts...]`, `${[title, ...required].join(' ')}.`)
  for (const { name, hint } of blanks) made.option(`--${name} <text>`, hint)
  made
    .option(
      '--set <blank=text>',
      'text of a blank that only some entries have; repeat for each',
      namedText,
      {},
    )
    .option('--at <moment>', 'a date, or a date with a time such as 2026-03-01T08:10 (default: now)')
    .action(async (texts: readonly string[], options) => {
      const named = blanks.flatMap(({ name }): [string, string][] =>
        options[name] === undefined ? [] : [[name, options[name]]],
      )
      const typed: Typed = { ...options.set, ...Object.fromEntries(named) }
      end(await logEntry(kind, typed, texts, options, terminal))
    })
}
