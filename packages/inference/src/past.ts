import {
  assemble,
  type Day,
  type FerricMediaReactor,
  type Model,
  type Moment,
  type Observation,
  type Opening,
  settingsOn,
  setWater,
  simulate,
  startOf,
  timeline,
} from '@holdfast/ecosystem'
import { exp } from '@holdfast/elementary'
import { coralBands } from '@holdfast/facts'
import { ensemble, type Tried } from './ensemble.ts'
import { kitError } from './kit.ts'
import { likelihoodOf } from './likelihood.ts'
import type { Draw } from './members.ts'
import type { OutlookQuestion } from './outlook-types.ts'
import { type Seen, seenIn } from './quantities-seen.ts'
import { normal } from './random.ts'
import { quietly, type Running } from './running.ts'
import type { Weights } from './weights.ts'

/** One member of the ensemble, run up to today. */
export interface Member {
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

/** The readings of this stretch before today weigh the members; the water starts from a reading at its start. */
const recentDays = 60

/** The system as it was described, with the algae that surveys found. */
export function surveyed(
  question: Pick<OutlookQuestion, 'system' | 'observations'>,
): OutlookQuestion['system'] {
  const { system, observations } = question
  const found = observations.filter(
    (reading) =>
      reading.quantity === 'cover' &&
      reading.value > 0 &&
      !system.algae.some(({ kind, surface }) => kind === reading.algae && surface === reading.surface),
  )
  const first = new Map<string, (typeof system.algae)[number]>()
  for (const { surface, algae, value } of found)
    if (surface !== undefined && algae !== undefined && !first.has(`${surface} ${algae}`))
      first.set(`${surface} ${algae}`, { kind: algae, surface, cover: value })
  return { ...system, algae: [...system.algae, ...first.values()] }
}

const isWater = ({ quantity }: Observation): boolean => quantity === 'nitrate' || quantity === 'phosphate'

/** The day of the reading from which the water starts: the last one before the recent stretch, else the first. */
function anchorDay({ observations, asOf, from }: OutlookQuestion): Day {
  const days = observations
    .filter((reading) => isWater(reading) && reading.day <= asOf && reading.day >= from)
    .map(({ day }) => day)
  const before = days.filter((day) => day <= asOf - recentDays)
  if (before.length > 0) return Math.max(...before)
  return days.length > 0 ? Math.min(...days) : from
}

/** Media hold what they took since they were placed, so the run begins there. */
function firstDay(question: OutlookQuestion, anchor: Day): Day {
  const reactor = question.system.equipment.find(
    (item): item is FerricMediaReactor => item.kind === 'ferric media reactor',
  )
  if (!reactor) return anchor
  const swaps = question.events
    .filter(({ kind, day }) => (kind === 'media placed' || kind === 'media removed') && day <= anchor)
    .map(({ day }) => day)
  const placed = reactor.placed !== undefined && reactor.placed <= anchor ? [reactor.placed] : []
  return Math.max(question.from, ...swaps, ...placed) === question.from && swaps.length + placed.length === 0
    ? question.from
    : Math.max(question.from, ...swaps, ...placed)
}

/** The readings nearest to a day, as this member takes them: within what their kits may be off by. */
export function openingOn(question: OutlookQuestion, day: Day, member: number): Opening {
  const near = (quantity: Observation['quantity']): Observation | undefined =>
    question.observations
      .filter((reading) => reading.quantity === quantity && reading.day <= question.asOf)
      .reduce<Observation | undefined>(
        (best, reading) => (!best || Math.abs(reading.day - day) < Math.abs(best.day - day) ? reading : best),
        undefined,
      )
  const taken = (quantity: 'nitrate' | 'phosphate'): number => {
    const reading = near(quantity)
    const draw = normal(question.seed, member, `opening ${quantity}`)
    if (!reading) return unread(quantity) * exp(draw)
    // Nothing was read: anything up to the limit, the middle of it in the median.
    if (reading.belowDetection) return (reading.value / 2) * exp(0.5 * draw)
    return reading.value * exp((draw * kitError(quantity, reading.value)) / reading.value)
  }
  const early = (quantity: 'ammonia' | 'nitrite'): number | undefined => {
    const reading = near(quantity)
    return reading && !reading.belowDetection && Math.abs(reading.day - day) < 2 ? reading.value : undefined
  }
  const ammonia = early('ammonia')
  const nitrite = early('nitrite')
  return {
    nitrate_mg_L: taken('nitrate'),
    phosphate_mg_L: taken('phosphate'),
    ...(ammonia === undefined ? {} : { ammonia_mg_N_L: ammonia }),
    ...(nitrite === undefined ? {} : { nitrite_mg_L: nitrite }),
  }
}

/** Water that nobody has read is taken to be in the middle of what reefs are kept in, within a factor of five or so. */
function unread(quantity: 'nitrate' | 'phosphate'): number {
  const [usual] = coralBands()
  const { low, high } = quantity === 'nitrate' ? usual.NO3_mg_L : usual.PO4_mg_L
  return Math.sqrt(low * high)
}

/** Runs every member up to today and weighs it by the recent readings. */
export function past(question: OutlookQuestion, running: Running = quietly): Past {
  const system = surveyed(question)
  const model = assemble(system)
  const seen = seenIn(model)
  const anchor = anchorDay(question)
  const begin = firstDay(question, anchor)
  const days = daysBetween(anchor, question.asOf)
  const moments = timeline({ ...question, system, from: Math.min(question.from, begin), to: question.asOf })
  const recent = question.observations.filter(
    ({ day, quantity }) =>
      day > anchor + 0.5 && day <= question.asOf && (quantity !== 'cover' || system.algae.length > 0),
  )
  const tried = ensemble({
    model,
    members: question.members,
    seed: question.seed,
    readings: recent.length,
    try: (draw, member) =>
      runMember({ question, model, moments, anchor, begin, days, seen, recent }, draw, member),
    running,
  })
  return {
    model,
    seen,
    days,
    members: tried.results,
    weights: tried.weights,
    readingsUsed: recent.length,
  }
}

interface MemberQuestion {
  readonly question: OutlookQuestion
  readonly model: Model
  readonly moments: readonly Moment[]
  readonly anchor: Day
  readonly begin: Day
  readonly days: readonly Day[]
  readonly seen: readonly Seen[]
  readonly recent: readonly Observation[]
}

function runMember(asked: MemberQuestion, draw: Draw, index: number): Tried<Member> {
  const { question, model, moments, anchor, begin, days, seen, recent } = asked
  const { parameters } = draw
  let settings = settingsOn(model, moments, begin)
  let start = startOf(model, parameters, openingOn(question, begin, index), begin, settings)
  const run = (from: Day, to: Day, samples: readonly Day[]) =>
    simulate({
      model,
      parameters,
      start,
      from,
      to,
      settings,
      samples,
      timeline: moments.filter(({ day }) => day >= from && day < to),
    })
  if (anchor > begin) {
    const before = run(begin, anchor, [])
    start = before.end
    settings = before.settings
    setWater(model, start, openingOn(question, anchor, index))
  }
  const readingDays = [...new Set(recent.map(({ day }) => day))]
  const wanted = [...new Set([...days, ...readingDays])].sort((a, b) => a - b)
  const result = run(anchor, question.asOf, wanted)
  const at = new Map(wanted.map((day, i) => [day, result.samples[i]]))
  return {
    logLikelihood: likelihoodOf(recent, seen, (day) => at.get(day)),
    result: {
      parameters,
      states: result.end,
      settings: result.settings,
      course: seen.map(({ of }) => Float64Array.from(days, (day) => of(at.get(day) ?? result.end))),
    },
  }
}

/** Every day from one to another, both ends included. */
export function daysBetween(from: Day, to: Day): readonly Day[] {
  const days: Day[] = []
  for (let day = from; day < to; day++) days.push(day)
  return [...days, to]
}
