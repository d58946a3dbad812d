import type { Issue } from '../issue.ts'
import type { BookProblem } from './book/book.ts'

const accepted =
  'A sheet (CSV, TSV, TXT or XLSX) with a header: a date and at least one quantity, such as "Date, NO3 (mg/L)".'

/** Why a file is not read, in words. */
export function refusal(fileName: string, problem: BookProblem): Issue {
  const issue = (got: string, next: string): Issue => ({
    code: problem.code,
    where: `Sheet "${fileName}"`,
    got,
    accepted,
    next: `${next} Nothing is stored.`,
  })
  switch (problem.code) {
    case 'empty-file':
      return issue('the file is empty', 'Choose another file.')
    case 'not-text':
      return issue(
        `the file is ${problem.looksLike ?? 'no text'}`,
        'Save the sheet as CSV or XLSX and choose that file.',
      )
    case 'no-columns':
      return issue(
        'there is one column only',
        'Save the sheet with commas, semicolons or tabs between its columns.',
      )
    case 'too-large':
      return issue(
        `it has too many ${problem.what} (the most is ${problem.most})`,
        'Save each year, or the part with the readings, as a file of its own.',
      )
    case 'broken-workbook':
      return issue(
        `the workbook cannot be read (${problem.why})`,
        'Open it in a spreadsheet program and save it anew, or as CSV.',
      )
  }
}

/** A file that was read, and in which there is nothing to take. */
export function nothingFound(
  fileName: string,
  code: 'no-header' | 'no-rows',
  place: { readonly firstLine: string; readonly headerRow: number },
): Issue {
  const where = `Sheet "${fileName}"`
  if (code === 'no-rows') {
    const got = `below the header in row ${place.headerRow} there is nothing`
    return {
      code,
      where,
      got,
      accepted: 'At least one row of readings.',
      next: 'Choose a sheet with readings. Nothing is stored.',
    }
  }
  const got = `no header was found (the first line is "${place.firstLine.slice(0, 80)}")`
  return {
    code,
    where,
    got,
    accepted,
    next: 'Name the columns in one row above the readings. Nothing is stored.',
  }
}
