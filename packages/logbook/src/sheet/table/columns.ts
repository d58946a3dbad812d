import { halfOfDay } from '../dates/parse-date.ts'
import { type Header, isUnitText, readHeader } from './header.ts'
import type { HeaderBlock } from './header-block.ts'
import { isDate, isFigure } from './header-block.ts'
import type { Column } from './table.ts'
import type { View } from './view.ts'

interface Draft {
  readonly at: number
  readonly text: string
  readonly header: Header
  /** Words over several columns, or beside the name: they tell columns of one quantity apart. */
  readonly apart: string
}

/** Rows on which a column without a word for it is taken for the dates. */
const sample = 200

/** The columns below a header, each with what is said of it and the column of its dates. */
export function columnsOf(view: View, block: HeaderBlock, end: number): readonly Column[] {
  const drafts: Draft[] = []
  for (let at = 0; at < view.width; at++) drafts.push(draftOf(view, block, at))
  const dates = dateColumns(view, block, end, drafts)
  const [firstDate = 0] = dates
  const times = drafts.filter(({ header }) => header.role === 'time').map(({ at }) => at)
  const apart = tellsApart(drafts)
  const valueAt = valueColumn(view, block, end, drafts)
  return drafts.map((draft) => {
    const { at, text } = draft
    const dateAt = dates.findLast((one) => one <= at) ?? firstDate
    const next = dates.find((one) => one > dateAt) ?? Number.POSITIVE_INFINITY
    const timeAt = times.find((one) => one < next && (one >= dateAt || dateAt === firstDate))
    const isValue = block.layout === 'long' && at === valueAt
    const header: Header = isValue
      ? { ...draft.header, role: 'value' }
      : dates.includes(at)
        ? { ...draft.header, role: draft.header.role === 'day' ? 'day' : 'date' }
        : draft.header
    return { at, text, header, dateAt, ...(timeAt !== undefined && { timeAt }), ...apart(draft) }
  })
}

function draftOf(view: View, { top, bottom }: HeaderBlock, at: number): Draft {
  const pieces: string[] = []
  let group = ''
  for (let row = top; row <= bottom; row++) {
    const written = view.cell(row, at)?.text
    // a line drawn below a header says nothing
    const own = written !== undefined && /^[-=_:+]+$/.test(written) ? undefined : written
    if (own !== undefined) pieces.push(own)
    const over = own ?? (row < bottom ? groupOver(view, row, at) : undefined)
    if (over !== undefined && row < bottom && !isNamed(over)) group = over
    else if (own === undefined && over !== undefined) pieces.unshift(over)
  }
  const said = pieces.filter((piece) => piece !== group).join(' ')
  const joined = pieces.join(' ')
  const header = withUnitOf(group, said)
  return { at, text: joined, header, apart: group !== '' ? group : header.others }
}

/** A header that says no unit takes that of its group, where it is one of its quantity: "Nutrients (mg/L as N)". */
function withUnitOf(group: string, said: string): Header {
  const header = readHeader(said)
  if (group === '' || header.quantity === undefined || header.unit !== undefined) return header
  const { quantity, unit, form } = readHeader(`${said} ${group}`)
  if (quantity !== header.quantity || unit === undefined) return header
  return { ...header, unit, ...(form !== undefined && { form }) }
}

/** The words of a group stand at its left, and hold until the next ones. */
function groupOver(view: View, row: number, at: number): string | undefined {
  const merged = view.spread(row, at)
  if (merged !== undefined) return merged.text
  if (view.spread(row + 1, at) === undefined) return undefined
  for (let left = at - 1; left >= 0; left--) {
    const cell = view.spread(row, left)
    if (cell === undefined) continue
    const { role } = readHeader(cell.text)
    return role === undefined || role === 'tank' ? cell.text : undefined
  }
  return undefined
}

const isNamed = (text: string): boolean => {
  const { quantity, role } = readHeader(text)
  return (
    quantity !== undefined || (role !== undefined && role !== 'tank' && role !== 'kit') || isUnitText(text)
  )
}

/** Columns that are headed as dates; else the one with the most dates in it. */
function dateColumns(
  view: View,
  { bottom }: HeaderBlock,
  end: number,
  drafts: readonly Draft[],
): readonly number[] {
  const headed = drafts.filter(({ header }) => header.role === 'date').map(({ at }) => at)
  if (headed.length > 0) return headed
  const days = drafts.filter(({ header }) => header.role === 'day').map(({ at }) => at)
  const counts = drafts.map(({ at, header }) => {
    if (header.quantity !== undefined || header.role === 'note') return 0
    let count = 0
    for (let row = bottom + 1; row < Math.min(end, bottom + 1 + sample); row++) {
      const cell = view.cell(row, at)
      if (cell !== undefined && isDate(cell)) count++
    }
    return count
  })
  const most = Math.max(...counts)
  return most > 0 ? [counts.indexOf(most)] : days
}

/** In a sheet with one reading a row, the column headed as values, else the first without a role that holds figures. */
function valueColumn(
  view: View,
  { bottom }: HeaderBlock,
  end: number,
  drafts: readonly Draft[],
): number | undefined {
  const headed = drafts.find(({ header }) => header.role === 'value')
  if (headed !== undefined) return headed.at
  const holdsFigures = ({ at }: Draft): boolean => {
    for (let row = bottom + 1; row < Math.min(end, bottom + 1 + sample); row++) {
      const cell = view.cell(row, at)
      if (cell !== undefined && isFigure(cell)) return true
    }
    return false
  }
  return drafts.find((draft) => draft.header.role === undefined && draft.text !== '' && holdsFigures(draft))
    ?.at
}

type Apart = (draft: Draft) => Pick<Column, 'tank' | 'kit' | 'half'>

/**
 * What tells columns of one quantity apart: the half of the day, the kit, else the tank. Where no quantity
 * comes twice, groups are for the eye only.
 */
function tellsApart(drafts: readonly Draft[]): Apart {
  const labels = new Map<string, Set<string>>()
  for (const { header, apart } of drafts) {
    if (header.quantity === undefined) continue
    labels.set(header.quantity, (labels.get(header.quantity) ?? new Set()).add(apart))
  }
  const isApart = [...labels.values()].some((found) => found.size > 1)
  const telling = new Set(
    [...labels.values()].filter((found) => found.size > 1).flatMap((found) => [...found]),
  )
  return ({ apart, header }) => {
    if (!isApart || apart === '' || !telling.has(apart)) return {}
    if (header.quantity === undefined && header.role !== 'note' && header.role !== 'water change') return {}
    const half = halfOfDay(apart)
    if (half !== undefined) return { half }
    return /\b(?:kit|test|photometer|meter|probe|messgerat|sonde|strips?)\b/i.test(apart)
      ? { kit: apart }
      : { tank: tankIn(apart) }
  }
}

/** "Tank: Display" and "Display tank (120 L)" are both the tank; the name is kept as written. */
const tankIn = (label: string): string =>
  label.replace(/^(?:tank|becken|aquarium|bac|acuario|vasca|bak)\s*[:=]\s*/i, '')
