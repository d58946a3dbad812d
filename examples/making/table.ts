import { type Books, type WayOut, waysOut } from './books.ts'

const begin = '<!-- made by npm run make-examples -->\n'
const end = '<!-- end -->\n'

const figure = (value: number): string => value.toFixed(Math.abs(value) < 10 ? 1 : 0)

const isHeld = ({ truth, low, high }: WayOut): boolean => truth >= low && truth <= high

/** Truth beside the fitted ledger, one row for each way out of each atom. */
export function tableOf(books: ReadonlyMap<string, Books>): string {
  const rows = [...books].flatMap(([name, of]) =>
    (['N', 'P'] as const).flatMap((atom) =>
      waysOut(of, atom).map((way) => [
        name,
        atom,
        way.name.replaceAll('_', ' '),
        figure(way.truth),
        `${figure(way.fitted)} (${figure(way.low)} to ${figure(way.high)})`,
        isHeld(way) ? 'yes' : 'no',
      ]),
    ),
  )
  return aligned([['example', 'atom', 'way out', 'truth', 'fitted', 'in the band'], ...rows])
}

/** As the formatter of the project leaves a table. */
function aligned([heads = [], ...rows]: readonly (readonly string[])[]): string {
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((cells) => cells[i]?.length ?? 0)))
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join(' | ')} |\n`
  return [heads, widths.map((width) => '-'.repeat(width)), ...rows].map(line).join('')
}

/** The page with the table in its place. */
export function withTable(page: string, table: string): string {
  const [from, to] = [page.indexOf(begin), page.indexOf(end)]
  if (from < 0 || to < from) throw new Error(`The page has no place for the table: ${begin}${end}`)
  return `${page.slice(0, from)}${begin}\n${table}\n${page.slice(to)}`
}
