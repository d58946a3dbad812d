import type { Sheet } from '@holdfast/logbook'

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

/** How a sheet was read. @example 'XLSX, decimal point, headings in row 3, one column for each quantity' */
export function formInWords({ encoding, delimiter, decimal, headerRow, layout }: Sheet): string {
  return [
    encoding,
    ...(delimiter === '' ? [] : [delimiters[delimiter] ?? `“${delimiter}” between fields`]),
    decimal === ',' ? 'decimal comma' : 'decimal point',
    ...(layout === 'across' ? [] : [`headings in row ${headerRow}`]),
    layouts[layout],
  ].join(', ')
}
