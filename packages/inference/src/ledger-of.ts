import { type Ledger, ledger, settingsOn, simulateTogether, startsOf, timeline } from '@holdfast/ecosystem'
import type { LedgerAnswer, Span } from './answers.ts'
import { assembledOn } from './assembled-on.ts'
import { ledgerOfBooks } from './books.ts'
import { type Draw, ensemble, type Tried } from './ensemble.ts'
import { type InRounds, workedOff } from './in-rounds.ts'
import { answerable, heldAgainst, targetsOf } from './likelihood.ts'
import {
  type Bookkeeper,
  bookkeepersOf,
  bookkeeping,
  isLong,
  longLedgerOf,
  recentOf,
  shareOfFitting,
} from './long-ledger.ts'
import { openingOn } from './opening.ts'
import type { OutlookQuestion } from './outlook-types.ts'
import { past } from './past.ts'
import { seenIn } from './quantities-seen.ts'
import { quietly, type Running } from './running.ts'

/**
 * The ledger of a span, over the ensemble: every member keeps its own books from the start of the span
 * on, weighed by the readings in it, or by the last of them where the span is long.
 */
export function ledgerOf(question: OutlookQuestion, span: Span, running: Running = quietly): LedgerAnswer {
  if (!isLong(span)) return workedOff(ledgerInRounds(question, span), running)
  const { onProgress } = running
  const shareOfFit = shareOfFitting(span)
  const known = past(recentOf(question, span), {
    ...running,
    onProgress: (share) => onProgress(shareOfFit * share),
  })
  const members = bookkeepersOf(known)
  const work: InRounds<Bookkeeper, Ledger, LedgerAnswer> = {
    run: bookkeeping(question, span),
    *rounds() {
      return longLedgerOf(known, question, span, yield members)
    },
    total: members.length,
  }
  return workedOff(work, {
    ...running,
    onProgress: (share) => onProgress(shareOfFit + (1 - shareOfFit) * share),
  })
}

/** The ledger of a span that is not long, as work that may be shared. */
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
      return ledgerOfBooks(model, results, weights.of)
    },
  }
}
