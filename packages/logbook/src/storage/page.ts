import { Refused } from '../issue.ts'
import type { Page } from '../logbook.ts'
import { storedOf } from './entry-row.ts'
import type { EntryRow } from './tables.ts'

/** The page in its rows, of which there is one more than its limit where another page follows. */
export function pageOf(rows: readonly EntryRow[], limit: number): Page {
  const entries = rows.slice(0, limit).map(storedOf)
  const last = rows[limit - 1]
  return rows.length > limit ? { entries, next: `${last.day}.${last.receipt}` } : { entries }
}

/** The last row of the page before, as its `next` names it. @throws Refused when it names none */
export function markOf(next: string): Pick<EntryRow, 'day' | 'receipt'> {
  const found = /^(\d{4}-\d{2}-\d{2})\.(\d{1,9})$/.exec(next)
  if (found !== null) return { day: found[1], receipt: Number(found[2]) }
  throw new Refused([
    {
      code: 'not-a-page',
      where: 'Page before',
      got: `"${next}" is no mark of a page`,
      accepted: 'The mark that the page before gave as its next.',
      next: 'Begin with the first page.',
    },
  ])
}
