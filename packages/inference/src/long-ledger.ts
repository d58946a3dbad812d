import { type Ledger, ledger, settingsOn, simulateTogether, startsOf, timeline } from '@holdfast/ecosystem'
import type { LedgerAnswer, Span } from './answers.ts'
import { assembledOn } from './assembled-on.ts'
import { ledgerOfBooks } from './books.ts'
import { drawnNames, drawScores, openings, parametersOf, type Scores } from './members.ts'
import { openingOn } from './opening.ts'
import type { OutlookQuestion } from './outlook-types.ts'
import { firstOf, type Past } from './past.ts'

/** Days over which a span is long: each fitting of a member would run through all of it again. */
const long = 183

/**
 * Whether the ledger of a span is kept by the members of the outlook: fitted to the latest readings of the span,
 * each runs through the whole of it once. Readings of years would have to be fitted by facts that stay the same
 * for years, and five runs through them take minutes.
 */
export const isLong = ({ from, to }: Span): boolean => to - from > long

/** Days that a member is run through while it is fitted: some two months, in each round. */
const fitted = 5 * 65

/** Of the time that a long ledger takes, the share that fits the members. */
export const shareOfFitting = ({ from, to }: Span): number => fitted / (fitted + to - from)

/** What is asked of the past whose members keep a long ledger: what was known at the end of the span. */
export const recentOf = (
  { levers: _levers, ...question }: OutlookQuestion,
  { to }: Span,
): OutlookQuestion => ({ ...question, asOf: to })

/** A member of a past, as far as a ledger needs it. */
export interface Bookkeeper {
  readonly scores: Scores
  readonly number: number
}

export const bookkeepersOf = ({ members }: Past): readonly Bookkeeper[] =>
  members.map(({ scores }, number) => ({ scores, number }))

/** Runs members through a span and keeps their books, any share of them at a time. */
export function bookkeeping(
  question: OutlookQuestion,
  { from, to }: Span,
): (members: readonly Bookkeeper[]) => readonly Ledger[] {
  const model = assembledOn(question, from)
  const { system, facts } = model
  const moments = timeline({ ...question, system, facts, from: Math.min(question.from, from), to })
  const settings = settingsOn(model, moments, from)
  const run = {
    model,
    settings,
    from,
    to,
    samples: [],
    marks: [from, to],
    timeline: moments.filter(({ day }) => day >= from && day < to),
  }
  return (members) => {
    const drawn = members.map(({ scores, number }) => {
      const all = withOpeningsAnew(scores, drawScores(drawnNames(model), question.seed, number))
      return { parameters: parametersOf(model, all), opening: openingOn(question, from, all, facts) }
    })
    const starts = startsOf(model, drawn, from, settings)
    return simulateTogether(
      run,
      drawn.map(({ parameters }, m) => ({ parameters, start: starts[m] })),
    ).map(({ marks }) => ledger(model, marks[0], marks[1]))
  }
}

/** What a member was fitted to, but for the readings it starts from: those of another day have errors of their own. */
const withOpeningsAnew = (fitted: Scores, drawn: Scores): Scores =>
  new Map([...drawn, ...[...fitted].filter(([name]) => !openings.has(name))])

/** The ledger of as many members as have kept books, the first ones of the past. */
export function longLedgerOf(
  known: Past,
  question: OutlookQuestion,
  { from }: Span,
  books: readonly Ledger[],
): LedgerAnswer {
  const { weights } = firstOf(known, books.length)
  const answer = ledgerOfBooks(assembledOn(question, from), books, weights.of)
  return { ...answer, remarks: [...answer.remarks, fittedLate] }
}

const fittedLate =
  'Over more than half a year the ledger follows the latest readings; of the earlier ones it takes those alone that it starts from.'
