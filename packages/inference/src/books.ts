import type { Account, Ledger, LedgerRow, Model } from '@holdfast/ecosystem'
import type { BandedLedger, LedgerAnswer } from './answers.ts'
import { ownFactRemarks } from './assembled-on.ts'
import { explanations } from './explain.ts'
import { weightedQuantiles } from './quantiles.ts'

/** One ledger out of the books that each member kept, with what explains its figures. */
export const ledgerOfBooks = (
  model: Model,
  books: readonly Ledger[],
  weights: readonly number[],
): LedgerAnswer => ({
  ledger: banded(books, weights),
  members: books.length,
  accounts: titlesOf(model),
  processes: explanations(model),
  remarks: ownFactRemarks(model),
})

const key = (row: LedgerRow): string => [row.process, row.instance, row.atom, row.from, row.to].join('|')

/** Means of the rows, which balance since each member's rows do, with the ends of their 90 % interval. */
function banded(books: readonly Ledger[], weights: readonly number[]): BandedLedger {
  const first = books[0]
  const keys = new Map<string, LedgerRow>()
  for (const book of books) for (const row of book.rows) if (!keys.has(key(row))) keys.set(key(row), row)
  const amounts = books.map((book) => new Map(book.rows.map((row) => [key(row), row.amount_umol])))
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value, m) => sum + value * weights[m], 0)
  return {
    ...first,
    weights,
    rows: [...keys].map(([id, row]) => {
      const values = amounts.map((amount) => amount.get(id) ?? 0)
      const [low, high] = weightedQuantiles(values, weights, [0.05, 0.95])
      return { ...row, amount_umol: mean(values), low_umol: low, high_umol: high, members: values }
    }),
    balances: first.balances.map((balance, i) => {
      const changes = books.map((book) => book.balances[i].end_umol - book.balances[i].start_umol)
      const [low, high] = weightedQuantiles(changes, weights, [0.05, 0.95])
      return {
        ...balance,
        start_umol: mean(books.map((book) => book.balances[i].start_umol)),
        end_umol: mean(books.map((book) => book.balances[i].end_umol)),
        change_low_umol: low,
        change_high_umol: high,
        changes,
      }
    }),
  }
}

function titlesOf(model: Model): Readonly<Record<string, string>> {
  const accounts = model.states.flatMap((entry): readonly Account[] =>
    entry.kind === 'atoms' ? [entry.account] : [],
  )
  return Object.fromEntries(accounts.map(({ id, title }) => [id, title]))
}
