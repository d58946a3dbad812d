import type { Around } from './cells/gather.ts'
import { isUnitOf } from './table/header.ts'
import type { Table } from './table/table.ts'
import { type MonthAndYear, monthAndYear } from './words/months.ts'

/** What titles, names of sheets and the shapes of tables say of each table. */
export function aroundEach(tables: readonly Table[]): (table: Table) => Around {
  const shapes = tables.map(shapeOf)
  const sheets = new Set(tables.map(({ view }) => view.sheet))
  const prefixOf = keyPrefixes(tables, shapes)
  const titlesOfSheet = new Map<string | undefined, string[]>()
  for (const { view, titles } of tables)
    titlesOfSheet.set(view.sheet, [...(titlesOfSheet.get(view.sheet) ?? []), ...titles])
  const allTitles = tables.flatMap(({ titles }) => titles)
  const tankOf = tanksByTable(tables)
  return (table) => {
    const { view, titles } = table
    const ofSheet = titlesOfSheet.get(view.sheet) ?? []
    const contexts = [view.sheet ?? '', ...titles.toReversed(), ...ofSheet].map(monthAndYear)
    const unit = [...titles, ...ofSheet].map(unitIn).find((one) => one !== undefined)
    const tank = tankOf(table)
    const isEach = sheets.size > 1 && prefixOf(table) === ''
    return {
      context: contextOf(contexts, allTitles.map(monthAndYear)),
      keyPrefix: prefixOf(table),
      whereSuffix: isEach ? ' of each sheet' : '',
      ...(unit !== undefined && { unit }),
      ...(tank !== undefined && { tank }),
    }
  }
}

/** Made of the headings of a table. */
export const shapeOf = ({ columns, layout }: Table): string =>
  JSON.stringify([layout, columns.map(({ text }) => text.toLowerCase())])

/** Tables with the same headings share their questions; others are told apart by the sheet, or the row. */
function keyPrefixes(tables: readonly Table[], shapes: readonly string[]): (table: Table) => string {
  const distinct = [...new Set(shapes)]
  if (distinct.length === 1) return () => ''
  const bySheet = new Set(tables.map(({ view }) => view.sheet)).size > 1
  return (table) => {
    const shape = shapeOf(table)
    const first = tables[shapes.indexOf(shape)] ?? table
    if (first.view.sheet !== undefined && bySheet) {
      const inSheet = tables.filter(({ view }) => view.sheet === first.view.sheet)
      return inSheet[0] === first ? `${first.view.sheet}!` : `${first.view.sheet}!${first.headerTop + 1}:`
    }
    return first === tables[0] ? '' : `${first.headerTop + 1}:`
  }
}

/** The month by the nearest words, and the year by the nearest that say one. */
function contextOf(near: readonly MonthAndYear[], all: readonly MonthAndYear[]): MonthAndYear {
  const month = near.find((one) => one.month !== undefined)
  const year = month?.year ?? [...near, ...all].find((one) => one.year !== undefined)?.year
  return { ...(month?.month !== undefined && { month: month.month }), ...(year !== undefined && { year }) }
}

/** "all ppm unless written", "alle Werte in mg/l": a unit in a title holds for columns that name none. */
function unitIn(title: string): string | undefined {
  const words = title.split(/[\s()[\],;:]+/)
  return words.find(
    (word) => /[/p]/i.test(word) && isUnitOf('nitrate', word) && isUnitOf('nitrate', `${word} NO3`),
  )
}

/**
 * Tables of the same quantities over the same days are of several tanks, named by the title above each or by
 * the sheet; tables that follow each other in time are of one.
 */
function tanksByTable(tables: readonly Table[]): (table: Table) => string | undefined {
  const named = new Map<Table, string>()
  for (const table of tables) {
    const rivals = tables.filter((other) => other !== table && overlaps(table, other))
    if (rivals.length === 0) continue
    const own = table.titles.at(-1)
    const apart = rivals.every(({ titles }) => titles.at(-1) !== own)
    const bySheet = rivals.every(({ view }) => view.sheet !== table.view.sheet)
    const name = bySheet ? table.view.sheet : apart ? own : undefined
    if (name !== undefined) named.set(table, name)
  }
  return (table) => named.get(table)
}

/** Whether two tables have a quantity and a written date in common. */
function overlaps(one: Table, other: Table): boolean {
  const quantities = (table: Table): Set<string> =>
    new Set(table.columns.flatMap(({ header }) => header.quantity ?? []))
  const shared = [...quantities(one)].some((quantity) => quantities(other).has(quantity))
  if (!shared || one.layout === 'long' || other.layout === 'long') return false
  const dates = datesOf(one)
  return [...datesOf(other)].filter((date) => dates.has(date)).length >= 2
}

function datesOf({ view, top, end, columns }: Table): ReadonlySet<string> {
  const at = columns[0]?.dateAt ?? 0
  const dates = new Set<string>()
  for (let row = top; row < Math.min(end, top + 1000); row++) {
    const text = view.cell(row, at)?.text
    // a number of a day stands in every month
    if (text !== undefined && text.length > 3) dates.add(text)
  }
  return dates
}
