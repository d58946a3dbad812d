import { randomBytes } from 'node:crypto'
import { basename } from 'node:path'
import {
  type Answers,
  dateOf,
  entriesFromSheet,
  type ImportInto,
  type Logbook,
  noteOfImport,
  Refused,
  type Remembered,
  rememberedFor,
  type Sheet,
  type SheetEntries,
} from '@holdfast/logbook'
import { isExport } from '@holdfast/logbook/export'
import { bytesOf } from '../bytes-of.ts'
import { chooseSystem, type Where, withLog } from '../open-log.ts'
import { refuse } from '../refuse.ts'
import { sheetReader } from '../sheet-reader.ts'
import { entriesInWords, mustAnswer, questionsInWords, sheetInWords, tanksInWords } from '../sheet-words.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'
import { writer } from '../writer.ts'
import { importExport } from './import-export.ts'

export interface ImportOptions extends Where {
  readonly system?: string
  readonly yes?: true
  readonly answer: Answers
  readonly tank: Readonly<Record<string, string>>
  readonly preview?: true
  readonly json?: true
}

/** What became of an import. */
type End = 'stored' | 'nothing new' | 'preview' | 'question open' | 'not agreed'

/**
 * Says what was understood of a sheet and, once nothing is open and the keeper agrees, stores it as one
 * batch. Answers given for a sheet with the same headings hold again, unless others are given.
 *
 * @param path  of a file, or - for what is pasted into the standard input
 * @returns 2 while a question is open, 0 otherwise
 */
export async function importCommand(
  path: string,
  options: ImportOptions,
  terminal: Terminal,
): Promise<0 | 2> {
  const bytes = await bytesOf(path)
  if (isExport(bytes)) return importExport(bytes, options, terminal)
  const fileName = path === '-' ? 'pasted text' : basename(path)
  const read = sheetReader(bytes, fileName, terminal)
  const unanswered = await read(options.answer)
  if (unanswered.issues.length > 0) throw new Refused(unanswered.issues)
  await refuseStrayAnswers(options.answer, read)
  return withLog(options, async (logbook) => {
    const systems = await storedOf(logbook, options)
    const stored = systems.flatMap((one) => one.stored)
    const [{ log }] = systems
    const { id: system, timeZone } = log.system
    const before = rememberedFor(unanswered, stored)
    const answers = { ...before.answers, ...options.answer }
    const tanks = { ...before.tanks, ...options.tank }
    const sheet = Object.keys(before.answers).length === 0 ? unanswered : await read(answers)
    const now = new Date()
    const day = dateOf(now.getTime() / 86_400_000, timeZone)
    const batch = `import-${day}-${randomBytes(3).toString('hex')}`
    const madeAt = now.toISOString()
    const placed = Object.entries(tanks).map(([tank, id]) => [tank, id === leaveOut ? null : id] as const)
    const into = {
      ...{ workspace: logbook.workspace, system, timeZone, madeAt, batch, ...writer },
      tanks: Object.fromEntries(placed),
    }
    const found = entriesFromSheet(sheet, into, stored)
    if (!options.json) {
      const again = rememberedInWords(before, options.answer)
      const words = [sheetInWords(sheet), ...again, ...foundInWords(sheet, found, log.system.name)]
      if (options.preview && found.entries.length > 0) words.push(entriesInWords(found.entries))
      terminal.out(words.join('\n\n'))
    }
    const end = await endOf(sheet, found, options, terminal)
    if (end === 'stored') await logbook.append(withNote(found, sheet, { answers, tanks }, into))
    terminal.out(
      options.json
        ? JSON.stringify(asJson(sheet, found, { system, batch, end }), null, 2)
        : `\n${endInWords(end, found, batch)}`,
    )
    return end === 'question open' || end === 'not agreed' ? 2 : 0
  })
}

/** The system that the readings are of, and those that are named for tanks of the sheet. */
async function storedOf(
  logbook: Logbook,
  { system, tank }: ImportOptions,
): Promise<readonly [ChosenSystem, ...ChosenSystem[]]> {
  const named = [...new Set(Object.values(tank))].filter((id) => id !== leaveOut)
  const [first = system, ...others] = named
  return [
    await chooseSystem(logbook, first),
    ...(await Promise.all(others.map((id) => chooseSystem(logbook, id)))),
  ]
}

type ChosenSystem = Awaited<ReturnType<typeof chooseSystem>>

/** What a tank is given as whose readings are not wanted. */
const leaveOut = 'none'

/** The entries, and what was answered for them. */
function withNote(
  { entries }: SheetEntries,
  sheet: Sheet,
  remembered: Remembered,
  into: ImportInto,
): SheetEntries['entries'] {
  const note = noteOfImport(sheet, remembered, into)
  return note === undefined ? entries : [...entries, note]
}

function rememberedInWords({ answers }: Remembered, given: Answers): string[] {
  const again = Object.entries(answers).filter(([id]) => given[id] === undefined)
  if (again.length === 0) return []
  const said = again.map(([id, answer]) => `${id}=${answer}`).join(', ')
  return [`Answered as for the last sheet with these headings: ${said}`]
}

async function endOf(
  sheet: Sheet,
  { entries, unplaced }: SheetEntries,
  { preview, yes }: ImportOptions,
  terminal: Terminal,
): Promise<End> {
  if (mustAnswer(sheet).length > 0 || unplaced.length > 0) return 'question open'
  if (entries.length === 0) return 'nothing new'
  if (preview) return 'preview'
  const agreed = yes ?? (await terminal.agrees(`Store ${entries.length} new entries?`))
  return agreed ? 'stored' : 'not agreed'
}

/** An answer to nothing that was asked, or with an option that was not offered, is a slip of the hand. */
async function refuseStrayAnswers(
  answers: Answers,
  read: (answers: Answers) => Promise<Sheet>,
): Promise<void> {
  const issues = []
  for (const [id, option] of Object.entries(answers)) {
    const { [id]: _, ...others } = answers
    issues.push(...strayIn(id, option, (await read(others)).questions))
  }
  if (issues.length > 0) throw new Refused(issues)
}

function strayIn(id: string, option: string, questions: Sheet['questions']): Refused['issues'] {
  const question = questions.find((one) => one.id === id)
  const where = `Answer "${id}=${option}"`
  if (question === undefined) {
    const asked = questions.map((one) => one.id).join(', ') || 'nothing'
    return refuse(
      'not-asked',
      where,
      'that was not asked',
      `Asked: ${asked}.`,
      'Leave it out or mend its name.',
    ).issues
  }
  const fits =
    question.options.length === 0 ? Number(option.replace(',', '.')) > 0 : question.options.includes(option)
  if (fits) return []
  const accepted =
    question.options.length === 0 ? 'A number above 0.' : `One of: ${question.options.join(', ')}.`
  return refuse('no-option', where, 'that is none of the options', accepted, 'Nothing is stored.').issues
}

function foundInWords(
  sheet: Sheet,
  { entries, already, mended, takenBack, unplaced }: SheetEntries,
  name: string,
): string[] {
  const counts = [
    `${sheet.readings.length} readings and ${sheet.notes.length} notes read`,
    `for ${name}: ${entries.length} new, ${already.length} already in the log`,
    ...(takenBack.length > 0 ? [`${takenBack.length} taken back before and left out`] : []),
  ]
  const columns = [
    { heading: 'Mended cell' },
    { heading: 'Day' },
    { heading: 'Of' },
    { heading: 'Was' },
    { heading: 'Now' },
  ]
  const rows = mended.map(({ cell, date, quantity, was, now }) => [cell, date, quantity, was, now])
  return [
    ...questionsInWords(sheet),
    ...tanksInWords(unplaced),
    ...(rows.length > 0 ? [table(columns, rows)] : []),
    `${counts.join('; ')}.`,
  ]
}

function endInWords(end: End, { entries }: SheetEntries, batch: string): string {
  switch (end) {
    case 'stored':
      return `Stored ${entries.length} entries as ${batch}. To take them back: holdfast undo-import ${batch}`
    case 'nothing new':
      return 'All of it is in the log already: 0 new.'
    case 'preview':
      return 'This was a preview. Nothing is stored.'
    case 'question open':
      return 'Nothing is stored while a question is open. Give --answer for each, then import again.'
    case 'not agreed':
      return 'Nothing is stored. Say --yes to store.'
  }
}

function asJson(
  sheet: Sheet,
  found: SheetEntries,
  { system, batch, end }: { readonly system: string; readonly batch: string; readonly end: End },
): unknown {
  const { fileName: file, encoding, delimiter, decimal, layout, headerRow, titles, columns } = sheet
  const must = new Set(mustAnswer(sheet))
  return {
    file,
    system,
    encoding,
    delimiter,
    decimal,
    layout,
    header_row: headerRow,
    titles,
    columns,
    questions: sheet.questions.map((question) => ({ ...question, must_be_answered: must.has(question) })),
    odd_cells: sheet.odd,
    readings: sheet.readings.length,
    notes: sheet.notes.length,
    new: found.entries.length,
    already: found.already.length,
    taken_back: found.takenBack,
    mended: found.mended,
    tanks_without_system: found.unplaced,
    cells: sheet.cells,
    entries: found.entries.map(({ id, kind, at, body }) => ({ id, kind, at, body })),
    outcome: end,
    batch: end === 'stored' ? batch : null,
  }
}
