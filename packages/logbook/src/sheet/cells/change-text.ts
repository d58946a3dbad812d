import type { Cell } from '../book/book.ts'
import type { Column } from '../table/table.ts'

/** The figure of a column of water changes in words: "Volume changed 30 L". */
export function changeText({ header, text }: Pick<Column, 'header' | 'text'>, cell: Cell): string {
  if (!/^[\d.,]+$/.test(cell.text))
    return /\d/.test(cell.text) ? `${header.others || text} ${cell.text}` : cell.text
  return [header.others || text, cell.text, header.unit]
    .filter((word) => word !== undefined && word !== '')
    .join(' ')
}
