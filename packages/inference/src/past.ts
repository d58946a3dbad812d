import {
  type Day,
  type Model,
  type Moment,
  type Simulation,
  settingsOn,
  setWater,
  simulateTogether,
  startsOf,
  timeline,
} from '@holdfast/ecosystem'
import { assembledOn } from './assembled-on.ts'
import { type Draw, ensemble, type Tried } from './ensemble.ts'
import { type InRounds, workedOff } from './in-rounds.ts'
import { type Answerable, answerable, heldAgainst, targetsOf } from './likelihood.ts'
import type { Scores } from './members.ts'
import { openingOn } from './opening.ts'
import type { OutlookQuestion } from './outlook-types.ts'
import { type Seen, seenIn } from './quantities-seen.ts'
import { quietly, type Running } from './running.ts'
import { type Weights, weightsOfFirst } from './weights.ts'
import { anchorDay, firstDay } from './window.ts'

/** One member of the ensemble, run up to today. */
export interface Member {
  /** What it was drawn from. */
  readonly scores: Scores
  readonly parameters: Float64Array
  readonly states: Float64Array
  readonly settings: Float64Array
  /** What could be read, day after day: one list for each of `seen`. */
  readonly course: readonly Float64Array[]
}

/** The ensemble from a day near the latest readings up to today, weighed by them. */
export interface Past {
  readonly model: Model
  readonly seen: readonly Seen[]
  readonly days: readonly Day[]
  readonly members: readonly Member[]
  readonly weights: Weights
  readonly readingsUsed: number
}

/** Runs every member up to today and weighs it by the recent readings. */
export const past = (question: OutlookQuestion, running: Running = quietly): Past =>
  workedOff(pastInRounds(question), running)

/** The equations that past and future are worked out with: those of the day on which the past begins. */
export const modelOf = (question: OutlookQuestion): Model =>
  assembledOn(question, firstDay(question, anchorDay(question)))

/** The same as work that may be shared. */
export function pastInRounds(question: OutlookQuestion): InRounds<Draw, Tried<Member>, Past> {
  const anchor = anchorDay(question)
  const begin = firstDay(question, anchor)
  const model = modelOf(question)
  const { system, facts } = model
  const seen = seenIn(model)
  const days = daysBetween(anchor, question.asOf)
  const moments = timeline({
    ...question,
    system,
    facts,
    from: Math.min(question.from, begin),
    to: question.asOf,
  })
  const recent = answerable(
    question.observations.filter(({ day }) => day > anchor + 0.5 && day <= question.asOf),
    seen,
  )
  const asked = { question, model, moments, anchor, begin, days, seen, recent }
  const { rounds, ...work } = ensemble({
    model,
    members: question.members,
    seed: question.seed,
    targets: targetsOf(recent, model.facts),
    try: (draws) => runMembers(asked, draws),
  })
  return {
    ...work,
    *rounds() {
      const { results, weights } = yield* rounds()
      return { model, seen, days, members: results, weights, readingsUsed: recent.length }
    },
  }
}

/** The past of its first members alone. */
export const firstOf = (known: Past, count: number): Past =>
  count === known.members.length
    ? known
    : { ...known, members: known.members.slice(0, count), weights: weightsOfFirst(known.weights, count) }

interface MembersQuestion {
  readonly question: OutlookQuestion
  readonly model: Model
  readonly moments: readonly Moment[]
  readonly anchor: Day
  readonly begin: Day
  readonly days: readonly Day[]
  readonly seen: readonly Seen[]
  readonly recent: readonly Answerable[]
}

function runMembers(asked: MembersQuestion, draws: readonly Draw[]): readonly Tried<Member>[] {
  const { question, model, moments, anchor, begin, days, seen, recent } = asked
  const settings = settingsOn(model, moments, begin)
  const opened = (day: Day) =>
    draws.map(({ parameters, scores }) => ({
      parameters,
      opening: openingOn(question, day, scores, model.facts),
    }))
  const run = (
    from: Day,
    to: Day,
    starts: readonly Float64Array[],
    begins: Float64Array,
    samples: readonly Day[],
  ): readonly Simulation[] =>
    simulateTogether(
      {
        model,
        from,
        to,
        settings: begins,
        samples,
        timeline: moments.filter(({ day }) => day >= from && day < to),
      },
      draws.map(({ parameters }, m) => ({ parameters, start: starts[m] })),
    )
  let starts = startsOf(model, opened(begin), begin, settings)
  let begins = settings
  if (anchor > begin) {
    const before = run(begin, anchor, starts, settings, [])
    starts = before.map(({ end }) => end)
    begins = before[0].settings
    for (const [m, { opening }] of opened(anchor).entries()) setWater(model, starts[m], opening)
  }
  const readingDays = [...new Set(recent.map(({ reading }) => reading.day))]
  const wanted = [...new Set([...days, ...readingDays])].sort((a, b) => a - b)
  return run(anchor, question.asOf, starts, begins, wanted).map(({ samples, end, settings: ends }, m) => {
    const at = new Map(wanted.map((day, i) => [day, samples[i]]))
    return {
      ...heldAgainst(recent, model.facts, draws[m].parameters, (day) => at.get(day) ?? end),
      result: {
        scores: draws[m].scores,
        parameters: draws[m].parameters,
        states: end,
        settings: ends,
        course: seen.map(({ of }) =>
          Float64Array.from(days, (day) => of(at.get(day) ?? end, draws[m].parameters)),
        ),
      },
    }
  })
}

/** Every day from one to another, both ends included. */
export function daysBetween(from: Day, to: Day): readonly Day[] {
  const days: Day[] = []
  for (let day = from; day < to; day++) days.push(day)
  return [...days, to]
}
