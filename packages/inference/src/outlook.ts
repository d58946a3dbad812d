import { type Day, type Model, simulateTogether, timeline } from '@holdfast/ecosystem'
import { coralBand, coralBands, type FactsOfSystem } from '@holdfast/facts'
import type { OutlookAnswer } from './answers.ts'
import { ownFactRemarks } from './assembled-on.ts'
import { explanations, factUsed } from './explain.ts'
import { type InRounds, workedOff } from './in-rounds.ts'
import { readingInterval } from './kit.ts'
import type { Fan, Outlook, OutlookQuestion } from './outlook-types.ts'
import { daysBetween, firstOf, type Member, type Past, past } from './past.ts'
import { weightedQuantiles } from './quantiles.ts'
import { type Seen, seenIn } from './quantities-seen.ts'
import { quietly, type Running } from './running.ts'

/** The outlook: each member of the ensemble runs on from today, and the fans are their weighted quantiles. */
export function outlook(question: OutlookQuestion, running: Running = quietly): OutlookAnswer {
  const half: Running = { ...running, onProgress: (share) => running.onProgress(0.8 * share) }
  return outlookFrom(past(question, half), question, {
    ...running,
    onProgress: (share) => running.onProgress(0.8 + 0.2 * share),
  })
}

/** The same from a past that is known already: a lever moves the future alone. */
export function outlookFrom(
  known: Past,
  question: OutlookQuestion,
  running: Running = quietly,
): OutlookAnswer {
  const work: InRounds<Present, Course, OutlookAnswer> = {
    run: futures(known.model, question),
    *rounds() {
      return outlookOf(known, question, yield known.members)
    },
    total: known.members.length,
  }
  return workedOff(work, running)
}

/** What a member needs to run on. */
export type Present = Pick<Member, 'parameters' | 'states' | 'settings'>

/** What could be read of one member from today on, day after day: one list for each of what is seen. */
export type Course = readonly Float64Array[]

/** Runs members on from today, any share of them at a time. */
export function futures(
  model: Model,
  question: OutlookQuestion,
): (members: readonly Present[]) => readonly Course[] {
  const seen = seenIn(model)
  const { asOf: from } = question
  const to = from + question.horizonDays
  const samples = daysBetween(from, to)
  const moments = timeline({
    ...question,
    system: model.system,
    facts: model.facts,
    from,
    to,
    ...(question.levers ? { change: { from, ...question.levers } } : {}),
  })
  return (members) =>
    simulateTogether(
      // What was done to the tank is the same for every member.
      { model, settings: members[0].settings, from, to, samples, timeline: moments },
      members.map(({ parameters, states }) => ({ parameters, start: states })),
    ).map((run, m) =>
      seen.map(({ of }) => Float64Array.from(run.samples, (states) => of(states, members[m].parameters))),
    )
}

/** The outlook of as many members as have a course, the first ones of the past. */
export function outlookOf(known: Past, question: OutlookQuestion, courses: readonly Course[]): OutlookAnswer {
  const { model } = known
  const some = firstOf(known, courses.length)
  const days = daysBetween(question.asOf, question.asOf + question.horizonDays)
  const bands = bandsOf(question.system.corals?.kind, model.facts)
  const answer: Outlook = {
    fans: known.seen.flatMap((seen, which) => fanOf(seen, which, some, days, courses, bands)),
    asOf: question.asOf,
    members: some.members.length,
    effectiveMembers: some.weights.effective,
    tempering: some.weights.tempering,
    readingsUsed: known.readingsUsed,
    remarks: remarksOf(known),
    inputsHash: '',
  }
  return {
    outlook: answer,
    readings: question.observations
      .filter(({ day }) => day <= question.asOf)
      .map((reading) => ({ reading, ...readingInterval(reading, model.facts) })),
    bands,
    processes: explanations(model),
  }
}

const units = { nitrate: 'mg/L NO3', phosphate: 'mg/L PO4', cover: 'share', 'media load': 'mg P' } as const

function fanOf(
  seen: Seen,
  which: number,
  known: Past,
  days: readonly Day[],
  courses: readonly Course[],
  bands: OutlookAnswer['bands'],
): readonly Fan[] {
  const { quantity } = seen
  if (quantity === 'ammonia' || quantity === 'nitrite') return []
  // The last day of the past is the first of the future.
  const before = known.days.slice(0, -1)
  const all = [...before, ...days]
  const values = all.map((_, i) =>
    known.members.map((member, m) => valueAt(member, courses[m], which, i, before.length)),
  )
  const rows = values.map((ofDay) =>
    weightedQuantiles(ofDay, known.weights.of, [0.05, 0.25, 0.5, 0.75, 0.95]),
  )
  const band = bands.find((one) => one.quantity === quantity)
  const column = (k: number): readonly number[] => rows.map((row) => row[k])
  return [
    {
      quantity,
      ...(seen.surface === undefined ? {} : { surface: seen.surface }),
      ...(seen.algae === undefined ? {} : { algae: seen.algae }),
      unit: units[quantity],
      days: all,
      quantiles: { p05: column(0), p25: column(1), p50: column(2), p75: column(3), p95: column(4) },
      ...(band ? { inBand: values.map((ofDay) => weightWithin(band, ofDay, known.weights.of)) } : {}),
    },
  ]
}

/** Weight of the members whose value lies in a band. */
const weightWithin = (
  { low, high }: OutlookAnswer['bands'][number],
  values: readonly number[],
  weights: readonly number[],
): number =>
  Math.min(
    1,
    values.reduce((sum, value, m) => (value >= low && value <= high ? sum + weights[m] : sum), 0),
  )

const valueAt = (member: Member, future: Course, which: number, i: number, before: number): number =>
  i < before ? member.course[which][i] : future[which][i - before]

function remarksOf(known: Past): readonly string[] {
  const { weights, members, model, readingsUsed } = known
  const remarks: string[] = []
  if (readingsUsed === 0)
    remarks.push('No recent reading weighs the simulated tanks: the fans show what the facts alone allow.')
  if (weights.tempering < 1)
    remarks.push(
      `Your readings tell more than ${members.length} simulated tanks can follow: they count for ${Math.round(100 * weights.tempering)} % of their weight, so the fans are wider than they need be.`,
    )
  if (model.notModelled.length > 0)
    remarks.push(`Not modelled yet, and so not in the fans: ${model.notModelled.join(', ')}.`)
  return [...remarks, ...ownFactRemarks(model)]
}

/** Where the keeper's kind of corals is usually held. */
export function bandsOf(corals: string | undefined, facts: FactsOfSystem): OutlookAnswer['bands'] {
  const band = (corals === undefined ? undefined : coralBand(corals)) ?? coralBands()[0]
  return (['nitrate', 'phosphate'] as const).map((quantity) => {
    const fact = factUsed(facts, band[quantity], 'band')
    return { quantity, low: fact.low, high: fact.high, fact }
  })
}
