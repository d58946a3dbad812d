import { quantityNames } from '@holdfast/quantities'
import { Command, Option } from 'commander'
import { backupCommand } from './commands/backup.ts'
import { convertCommand } from './commands/convert.ts'
import { exportCommand } from './commands/export.ts'
import { factsCommand } from './commands/facts.ts'
import { importCommand } from './commands/import-sheet.ts'
import { keyCommand } from './commands/key.ts'
import { logCommands } from './commands/log/index.ts'
import { restoreCommand } from './commands/restore.ts'
import { systemAdd, systemList, systemShow } from './commands/system.ts'
import { undoImport } from './commands/undo-import.ts'
import { waterCommand } from './commands/water.ts'
import { answer, date, gathered, numberAboveZero, waterChange, wholeNumber } from './options.ts'
import type { Terminal } from './terminal.ts'

const after = `
Where the log lives: --data, else HOLDFAST_DATA, else the usual place of the platform.
Results go to the standard output, errors and progress to the standard error.
With --json a command prints one JSON document; keys carry their units.

Exit codes: 0 fine, 1 an error (its words say what to do), 2 a question is open and nothing is stored,
130 stopped by Ctrl-C.

Examples:
  holdfast system add reef.json --from 2026-01-04
  holdfast log reading nitrate "5 mg/L NO3" --kit "colour kit" --at 2026-03-01T08:10
  holdfast import tests.csv --preview
  holdfast import tests.csv --answer nitrate-form:B=NO3 --yes
  holdfast ledger --from 2026-03-01 --to 2026-03-31 --atom P
  holdfast sensitivity --days 90
  holdfast ladder --kind hair_green
  holdfast commissioning
  holdfast outlook --days 56 --water-change "60 L / 14 d"
  holdfast convert "1.1 mg/L NO3-N" --as nitrate
  holdfast water oxygen_saturation S=35 t=25
  holdfast export log.xlsx
  holdfast backup
  holdfast facts coral nitrate
  holdfast key colour=brown form=dust_film mainly_on=sand
`

/** The commands; each action sets the exit code through `end` when it is not 0. */
export function program(terminal: Terminal, end: (code: number) => void): Command {
  const holdfast = new Command('holdfast')
    .description('The ledger of a reef aquarium’s nutrients and the outlook of its water, from your own log.')
    .addHelpText('after', after)
    .configureOutput({ writeErr: terminal.err })
    .exitOverride()
  const command = (parent: Command, name: string, says: string): Command =>
    parent
      .command(name)
      .description(says)
      .option('--data <folder>', 'where the log lives')
      .option('--json', 'one JSON document for programs')

  logCommands(holdfast, command, terminal, end)

  command(
    holdfast,
    'import <file>',
    'Take readings and notes over from a spreadsheet (CSV, TSV, TXT, XLSX; - for pasted text), or a log from an export.',
  )
    .option('--system <id>', 'whose readings they are; needed when there are several')
    .option('--answer <question=option>', 'answer to a question of the sheet; repeat for each', answer, {})
    .option(
      '--tank <name=system>',
      'system of a tank that the sheet names, or none; repeat for each',
      answer,
      {},
    )
    .option('--preview', 'say what was understood and store nothing')
    .option('--yes', 'store without asking')
    .action(async (file, options) => end(await importCommand(file, options, terminal)))
  command(holdfast, 'undo-import <batch>', 'Take an import back as a whole.').action((batch, options) =>
    undoImport(batch, options, terminal),
  )

  command(
    holdfast,
    'export <file>',
    'Write the whole log to a file: .json, .csv or .xlsx, each with everything.',
  ).action((file, options) => exportCommand(file, options, terminal))
  command(holdfast, 'backup', 'Copy the log and its attachments; programs that use the log go on.')
    .option(
      '--to <folder>',
      'folder of the backups (default: HOLDFAST_BACKUPS, else "backups" beside the log)',
    )
    .action((options) => backupCommand(options, terminal))
  command(
    holdfast,
    'restore [backup]',
    'Put a backup in the place of the log, which is kept; lists them without one.',
  )
    .option('--last', 'the newest backup that is whole')
    .action((backup, options) => restoreCommand(backup, options, terminal))

  const system = holdfast.command('system').description('Describe systems and look at them.')
  command(system, 'add <file>', 'Store the description of a system (a JSON document).')
    .option('--from <date>', 'day from which it holds (default: today)', date)
    .option('--mend', 'mends what was said before, where nothing changed in the tank')
    .action((file, options) => systemAdd(file, options, terminal))
  command(system, 'list', 'The systems of this log.').action((options) => systemList(options, terminal))
  command(system, 'show [id]', 'The description that holds on the last day of the log.').action(
    (id, options) => systemShow(id, options, terminal),
  )

  holdfast
    .command('convert <text>')
    .description('Say a figure in its other units; what has two meanings is asked about.')
    .requiredOption('--as <quantity>', `one of ${quantityNames.join(', ')}`)
    .option('--to <unit>', 'this unit only, such as "mg/L NO3-N" (default: all usual ones)')
    .option('--form <form>', 'form where the text names none, such as NO3-N')
    .option('--step <number>', 'step of the chart or display, in the unit of the text', numberAboveZero)
    .option('--density <number>', 'kg/L of the water, for units by the kilogram', numberAboveZero)
    .option('--hours <number>', 'of light in a day, for light over a day', numberAboveZero)
    .option('--json', 'one JSON document for programs')
    .action((text, options) => end(convertCommand(text, options, terminal)))
  holdfast
    .command('water [quantity] [inputs...]')
    .description('Reckon a quantity of sea water from inputs such as S=35 t=25; without one, list them.')
    .option('--json', 'one JSON document for programs')
    .action((quantity, inputs, options) => end(waterCommand(quantity, inputs, options, terminal)))

  holdfast
    .command('facts [words...]')
    .description('What the model takes for known: value, band, unit, source, and how it is known.')
    .option('--weakest <count>', 'the estimates that leave most open', wholeNumber(1, 1000))
    .option('--json', 'one JSON document for programs')
    .action((words, options) => factsCommand(words, options, terminal))

  holdfast
    .command('key [traits...]')
    .description(
      'What a growth is, from what you noted of it (colour=brown form=dust_film), and what to look at next.',
    )
    .option('--unknown <trait>', 'a trait that you cannot look at; repeat for each', gathered, [])
    .option('--traits', 'list every trait with its states')
    .option('--json', 'one JSON document for programs')
    .action((noted, options) => keyCommand(noted, options, terminal))

  // The model is loaded by the commands that run it; the others start without.
  const run = (name: string, says: string): Command =>
    command(holdfast, name, says)
      .option('--system <id>', 'which system; needed when there are several')
      .option('--members <count>', 'runs over the bands of the facts', wholeNumber(1, 10_000), 100)
      .option('--seed <number>', 'the same seed gives the same answer', wholeNumber(0, 4_294_967_295), 1)
  run('ledger', 'What came in, went out and was stored, mg per day.')
    .option('--from <date>', 'first day (default: that of the log)', date)
    .option('--to <date>', 'last day (default: that of the log)', date)
    .addOption(new Option('--atom <atom>', 'one atom only').choices(['N', 'P', 'C']))
    .action(async (options) => (await import('./commands/ledger.ts')).ledgerCommand(options, terminal))
  run('outlook', 'The water and the algae in the days to come.')
    .option('--days <count>', 'how far ahead', wholeNumber(1, 730), 56)
    .option('--water-change <routine>', 'as if so much were changed, such as "60 L / 14 d"', waterChange)
    .action(async (options) => (await import('./commands/outlook.ts')).outlookCommand(options, terminal))
  run('reach', 'Where the crew gets, what it eats of what grows there in a week, and what it leaves.').action(
    async (options) => (await import('./commands/reach.ts')).reachCommand(options, terminal),
  )
  run('crew', 'Which animals hold what grows, how many and in what order, and who would starve.')
    .option(
      '--with <system>',
      'another system for one plan over both, in which one lends to the other; repeat for each',
      gathered,
      [],
    )
    .option('--vessel <id>', 'vessel that the crew is for (default: the one with the largest surfaces)')
    .option('--with-caution', 'also animals that are safe with caution only')
    .option('--never <animal>', 'a taxon or group that is not to come; repeat for each', gathered, [])
    .option('--only <animal>', 'a taxon or group of which alone to plan; repeat for each', gathered, [])
    .option(
      '--like <animal>',
      'a taxon or group of which at least one is to live there; repeat',
      gathered,
      [],
    )
    .option('--keep', 'nobody that is there is given away')
    .option('--most-of-one <count>', 'most animals of one taxon', wholeNumber(1, 10_000))
    .option(
      '--by-hand <grams>',
      'most dry algae that the hand may have to take out in a week',
      numberAboveZero,
    )
    .option('--budget <us-dollars>', 'most that the animals may cost together', numberAboveZero)
    .option('--accept', 'keep the plan in the log, where it was tried and holds')
    .action(async (options) => (await import('./commands/crew.ts')).crewCommand(options, terminal))
  run('ladder', 'What to do about the water and what grows, the cause first, one measure after the other.')
    .option('--kind <kind>', 'kind of algae that is meant, such as hair_green (default: what grows most)')
    .option('--with-caution', 'also animals that are safe with caution only')
    .action(async (options) => (await import('./commands/ladder.ts')).ladderCommand(options, terminal))
  run(
    'commissioning',
    'Whether a new system is ready for its first animals, what is still to be shown, and when that may be.',
  ).action(async (options) =>
    (await import('./commands/commissioning.ts')).commissioningCommand(options, terminal),
  )
  command(holdfast, 'sensitivity', 'Which facts of the model move nitrate, phosphate and cover most.')
    .option('--system <id>', 'which system; needed when there are several')
    .option('--days <count>', 'how far ahead', wholeNumber(1, 730), 90)
    .option('--walks <count>', 'of the screening; each takes a run for every fact', wholeNumber(1, 1000), 10)
    .option(
      '--closer <count>',
      'facts of each quantity that share out its variance; 0 for none',
      wholeNumber(0, 50),
      6,
    )
    .option('--samples <count>', 'of the shares', wholeNumber(1, 100_000), 128)
    .option('--seed <number>', 'the same seed gives the same answer', wholeNumber(0, 4_294_967_295), 1)
    .action(async (options) =>
      (await import('./commands/sensitivity.ts')).sensitivityCommand(options, terminal),
    )
  return holdfast
}
