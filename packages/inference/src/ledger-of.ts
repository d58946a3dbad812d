import {
  type Account,
  type Ledger,
  type LedgerRow,
  ledger,
  type Model,
  settingsOn,
  simulateTogether,
  startsOf,
  timeline,
} from '@holdfast/ecosystem'
import type { BandedLedger, LedgerAnswer, Span } from './answers.ts'
import { assembledOn, ownFactRemarks } from './assembled-on.ts'
import { type Draw, ensemble, type Tried } from './ensemble.ts'
import { explanations } from './explain.ts'
import { type InRounds, workedOff } from './in-rounds.ts'
import { answerable, heldAgainst, targetsOf } from './likelihood.ts'
import { openingOn } from './opening.ts'
import type { OutlookQuestion } from './outlook-types.ts'
import { weightedQuantiles } from './quantiles.ts'
import { seenIn } from './quantities-seen.ts'
import { quietly, type Running } from './running.ts'

/**
 * The ledger of a span, over the ensemble: every member keeps its own books from the start of the span
 * on, weighed by the readings in it.
 */
export const ledgerOf = (question: OutlookQuestion, span: Span, running: Running = quietly): LedgerAnswer =>
  workedOff(ledgerInRounds(question, span), running)

/** The same as work that may be shared. */
export function ledgerInRounds(
  question: OutlookQuestion,
  span: Span,
): InRounds<Draw, Tried<Ledger>, LedgerAnswer> {
  const model = assembledOn(question, span.from)
  const { system, facts } = model
  const { from, to } = span
  const moments = timeline({ ...question, system, facts, from: Math.min(question.from, from), to })
  const readings = answerable(
    question.observations.filter(({ day }) => day > from + 0.5 && day <= to),
    seenIn(model),
  )
  const days = [...new Set(readings.map(({ reading }) => reading.day))].sort((a, b) => a - b)
  const { rounds, ...work } = ensemble({
    model,
    members: question.members,
    seed: question.seed,
    targets: targetsOf(readings, facts),
    try: (draws) => {
      const settings = settingsOn(model, moments, from)
      const opened = draws.map(({ parameters, scores }) => ({
        parameters,
        opening: openingOn(question, from, scores, facts),
      }))
      const starts = startsOf(model, opened, from, settings)
      const runs = simulateTogether(
        {
          model,
          settings,
          from,
          to,
          samples: days,
          marks: [from, to],
          timeline: moments.filter(({ day }) => day >= from && day < to),
        },
        draws.map(({ parameters }, m) => ({ parameters, start: starts[m] })),
      )
      return runs.map(({ marks, samples }, m) => ({
        result: ledger(model, marks[0], marks[1]),
        ...heldAgainst(readings, facts, draws[m].parameters, (day) => samples[days.indexOf(day)]),
      }))
    },
  })
  return {
    ...work,
    *rounds() {
      const { results, weights } = yield* rounds()
      return {
        ledger: banded(results, weights.of),
        members: question.members,
        accounts: titlesOf(model),
        processes: explanations(model),
        remarks: ownFactRemarks(model),
      }
    },
  }
}

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
