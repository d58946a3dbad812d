import { randomBytes } from 'node:crypto'
import { basename } from 'node:path'
import {
  type Answers,
  dateOf,
  entriesFromSheet,
  Refused,
  readSheet,
  type Sheet,
  type SheetEntries,
} from '@holdfast/logbook'
import { isExport } from '@holdfast/logbook/export'
import { bytesOf } from '../bytes-of.ts'
import { chooseSystem, type Where, withLog } from '../open-log.ts'
import { refuse } from '../refuse.ts'
import { mustAnswer, questionsInWords, sheetInWords } from '../sheet-words.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'
import { writer } from '../writer.ts'
import { importExport } from './import-export.ts'

export interface ImportOptions extends Where {
  readonly system?: string
  readonly yes?: true
  readonly answer: Answers
  readonly preview?: true
  readonly json?: true
}

/** What became of an import. */
type End = 'stored' | 'nothing new' | 'preview' | 'question open' | 'not agreed'

/**
 * Says what was understood of a sheet and, once nothing is open and the keeper agrees, stores it as one
 * batch.
 *
 * @returns 2 while a question is open, 0 otherwise
 */
export async function importCommand(
  path: string,
  options: ImportOptions,
  terminal: Terminal,
): Promise<0 | 2> {
  const bytes = await bytesOf(path)
  if (isExport(bytes)) return importExport(bytes, options, terminal)
  const read = (answers: Answers): Sheet => readSheet(bytes, basename(path), answers)
  const sheet = read(options.answer)
  if (sheet.issues.length > 0) throw new Refused(sheet.issues)
  refuseStrayAnswers(options.answer, read)
  return withLog(options, async (logbook) => {
    const { log, stored } = await chooseSystem(logbook, options.system)
    const { id: system, timeZone } = log.system
    const now = new Date()
    const day = dateOf(now.getTime() / 86_400_000, timeZone)
    const batch = `import-${day}-${randomBytes(3).toString('hex')}`
    const madeAt = now.toISOString()
    const into = { workspace: logbook.workspace, system, timeZone, madeAt, batch, ...writer }
    const found = entriesFromSheet(sheet, into, stored)
    if (!options.json)
      terminal.out([sheetInWords(sheet), ...foundInWords(sheet, found, log.system.name)].join('\n\n'))
    const end = await endOf(sheet, found, options, terminal)
    if (end === 'stored') await logbook.append(found.entries)
    terminal.out(
      options.json
        ? JSON.stringify(asJson(sheet, found, { system, batch, end }), null, 2)
        : `\n${endInWords(end, found, batch)}`,
    )
    return end === 'question open' || end === 'not agreed' ? 2 : 0
  })
}

async function endOf(
  sheet: Sheet,
  { entries }: SheetEntries,
  { preview, yes }: ImportOptions,
  terminal: Terminal,
): Promise<End> {
  if (mustAnswer(sheet).length > 0) return 'question open'
  if (entries.length === 0) return 'nothing new'
  if (preview) return 'preview'
  const agreed = yes ?? (await terminal.agrees(`Store ${entries.length} new entries?`))
  return agreed ? 'stored' : 'not agreed'
}

/** An answer to nothing that was asked, or with an option that was not offered, is a slip of the hand. */
function refuseStrayAnswers(answers: Answers, read: (answers: Answers) => Sheet): void {
  const issues = Object.entries(answers).flatMap(([id, option]) => {
    const { [id]: _, ...others } = answers
    const { questions } = read(others)
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
  })
  if (issues.length > 0) throw new Refused(issues)
}

function foundInWords(
  sheet: Sheet,
  { entries, already, mended, takenBack }: SheetEntries,
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
    outcome: end,
    batch: end === 'stored' ? batch : null,
  }
}
