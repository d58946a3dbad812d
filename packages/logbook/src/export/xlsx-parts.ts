import { headings, type Row } from './table.ts'

/** The parts of a workbook (ECMA-376, Office Open XML) that hold plain tables. */

const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'
const document = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const packaging = 'http://schemas.openxmlformats.org/package/2006'
const media = 'application/vnd.openxmlformats-officedocument.spreadsheetml'

/** The kinds of the parts. */
export function types(sheets: readonly string[]): string {
  const part = (path: string, kind: string): string =>
    `<Override PartName="/xl/${path}" ContentType="${media}.${kind}+xml"/>`
  const ofSheets = sheets.map((_, place) => part(`worksheets/sheet${place + 1}.xml`, 'worksheet'))
  return `${declaration}<Types xmlns="${packaging}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>${part('workbook.xml', 'sheet.main')}${part('styles.xml', 'styles')}${ofSheets.join('')}</Types>`
}

/** What a part refers to, as rId1, rId2 …; the kind of each is in its path. */
export function relations(targets: readonly string[]): string {
  const kindOf = (target: string): string =>
    target.includes('sheets/') ? 'worksheet' : target.includes('styles') ? 'styles' : 'officeDocument'
  const each = targets.map(
    (target, place) =>
      `<Relationship Id="rId${place + 1}" Type="${document}/${kindOf(target)}" Target="${target}"/>`,
  )
  return `${declaration}<Relationships xmlns="${packaging}/relationships">${each.join('')}</Relationships>`
}

/** The sheets by name; rId1 is the styles. */
export function contents(sheets: readonly string[]): string {
  const each = sheets.map(
    (name, place) => `<sheet name="${name}" sheetId="${place + 1}" r:id="rId${place + 2}"/>`,
  )
  return `${declaration}<workbook xmlns="${main}" xmlns:r="${document}"><sheets>${each.join('')}</sheets></workbook>`
}

/** Style 1 is a text that stays one when the cell is edited, 2 a heading. */
export const styles = `${declaration}<styleSheet xmlns="${main}"><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="3"><xf xfId="0"/><xf xfId="0" quotePrefix="1"/><xf xfId="0" fontId="1" applyFont="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`

/** Width of each column, in characters. */
const widths = [8, 24, 16, 12, 8, 20, 60, 14, 12, 12, 12, 24]

export const sheetStart = `${declaration}<worksheet xmlns="${main}"><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews><cols>${widths
  .map((width, place) => `<col min="${place + 1}" max="${place + 1}" width="${width}" customWidth="1"/>`)
  .join('')}</cols><sheetData>`

/** @param rows  how many were written */
export const sheetEnd = (rows: number): string =>
  `</sheetData><autoFilter ref="A1:${letter(headings.length - 2)}${rows}"/></worksheet>`

/** Characters of the whole in one cell; a spreadsheet program holds 32,767, and cuts off what is more. */
const inOneCell = 16_000

/** A row of the sheet; a whole too long for one cell goes on in the next ones. */
export function sheetRow(number: number, { cells, whole }: Row, as?: 'heading'): string {
  const style = as === 'heading' ? 2 : 1
  const text = (value: string, column: number): string =>
    value === ''
      ? ''
      : `<c r="${letter(column)}${number}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${escaped(value)}</t></is></c>`
  const before = cells.map((cell, column) =>
    typeof cell === 'number' ? `<c r="${letter(column)}${number}"><v>${cell}</v></c>` : text(cell, column),
  )
  const pieces = cut(whole).map((piece, place) => text(piece, headings.length - 1 + place))
  return `<row r="${number}">${before.join('')}${pieces.join('')}</row>`
}

/** Pieces that neither begin nor end with a space, which some readers take away. */
function cut(whole: string): string[] {
  const count = Math.ceil(whole.length / inOneCell)
  const pieces = Array.from({ length: count }, (_, place) =>
    whole.slice(place * inOneCell, (place + 1) * inOneCell),
  )
  // In canonical JSON a space is always within a text, where its escape says the same.
  return pieces.map((piece) => piece.replace(/^ | $/g, '\\u0020'))
}

/** The letters of a column, counted from 0: A, B … Z, AA. */
function letter(column: number): string {
  const last = String.fromCharCode(65 + (column % 26))
  return column < 26 ? last : letter(Math.floor(column / 26) - 1) + last
}

/** Text inside an element; "_x0041_" there would be read as an escape. */
function escaped(text: string): string {
  return text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
}
