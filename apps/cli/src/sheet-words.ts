import { type Entry, type Sheet, type SheetQuestion, sayEntry } from '@holdfast/logbook'
import { table } from './table.ts'

const delimiters: Readonly<Record<string, string>> = {
  ',': 'commas between fields',
  ';': 'semicolons between fields',
  '\t': 'tabs between fields',
  '|': 'bars between fields',
}

const layouts: Readonly<Record<Sheet['layout'], string>> = {
  wide: 'one column for each quantity',
  long: 'one reading a row',
  across: 'dates across, a row a quantity',
}

/** Questions on which cells wait; the others may be answered and need not be. */
export const mustAnswer = ({ questions }: Sheet): readonly SheetQuestion[] =>
  questions.filter(({ waiting }) => waiting > 0)

/** How the file was read, column by column, and every cell that is no plain reading. */
export function sheetInWords(sheet: Sheet): string {
  const { fileName, encoding, delimiter, decimal, headerRow, layout, titles, columns, odd } = sheet
  const form = [
    encoding,
    ...(delimiter === '' ? [] : [delimiters[delimiter] ?? `"${delimiter}" between fields`]),
    decimal === ',' ? 'decimal comma' : 'decimal point',
    ...(layout === 'across' ? [] : [`header in row ${headerRow}`]),
    layouts[layout],
  ]
  const columnTable = table(
    [
      { heading: 'Column' },
      { heading: 'Header' },
      { heading: 'Taken as' },
      { heading: 'Unit' },
      { heading: 'Form' },
    ],
    columns.map(({ sheet: name, letter, header, role, unit, form }) => [
      name === undefined ? letter : `${name}!${letter}`,
      header.replace(/\s+/g, ' '),
      role === 'unknown' ? 'not known' : role,
      unit ?? '',
      form ?? '',
    ]),
  )
  const oddTable = table(
    [{ heading: 'Odd cell' }, { heading: 'As written' }, { heading: 'Why' }, { heading: 'Taken' }],
    odd.map(({ cell, asWritten, why, taken }) => [cell, asWritten.replace(/\s+/g, ' '), why, taken]),
  )
  return [
    `Sheet "${fileName}": ${form.join(', ')}.`,
    ...(titles.length > 0 ? [`Above the header: ${titles.join(' / ')}`] : []),
    columnTable,
    ...(odd.length > 0 ? [oddTable] : []),
  ].join('\n\n')
}

/** The open questions with what to type for each option. */
export function questionsInWords(sheet: Sheet): string[] {
  const must = mustAnswer(sheet)
  const may = sheet.questions.filter((question) => !must.includes(question))
  return [
    ...(must.length > 0
      ? [['To be answered before anything is stored:', ...must.map(asked)].join('\n')]
      : []),
    ...(may.length > 0 ? [['May be answered:', ...may.map(asked)].join('\n')] : []),
  ]
}

function asked({ id, where, question, options, waiting }: SheetQuestion): string {
  const cells = waiting > 0 ? ` ${waiting} ${waiting === 1 ? 'cell waits' : 'cells wait'} for it.` : ''
  const choices = options.length > 0 ? options : ['NUMBER']
  return [
    `  ${where}: ${question}${cells}`,
    ...choices.map((option) => `    --answer ${quoted(`${id}=${option}`)}`),
  ].join('\n')
}

/** In quotes where a shell would part or read it otherwise. */
const quoted = (text: string): string => (/^[\w:=./-]+$/.test(text) ? text : `"${text}"`)

/** Tanks of the sheet for which no system was named. */
export function tanksInWords(unplaced: readonly string[]): string[] {
  if (unplaced.length === 0) return []
  const lines = unplaced.map((tank) => `    --tank ${quoted(`${tank}=SYSTEM`)}`)
  return [
    ['The sheet tells tanks apart. Say which system each is, or "none" to leave it out:', ...lines].join(
      '\n',
    ),
  ]
}

const mostShown = 40

/** What would be stored, as it would be stored; of a long list the first and how many more. */
export function entriesInWords(entries: readonly Entry[]): string {
  const rows = entries
    .slice(0, mostShown)
    .map((entry) => [entry.at.slice(0, 16).replace('T', ' '), sayEntry(entry)])
  const more = entries.length - rows.length
  const shown = table([{ heading: 'Day' }, { heading: 'To be stored' }], rows)
  return more > 0 ? `${shown}\n... and ${more} more; --json lists all.` : shown
}
