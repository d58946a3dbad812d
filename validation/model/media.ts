/** What ferric media still take, and whether phosphate comes back after it was lowered. */
import { type Day, settingsOn, simulate, startOf, timeline } from '@holdfast/ecosystem'
import { openingOn } from '@holdfast/inference'
import { mediumLeft } from '@holdfast/ladder'
import { waterVolume } from '../answers/answer.ts'
import { anHourLater, noon } from '../calendar.ts'
import type { CaseFile } from '../case-file.ts'
import { eventsOf, lastPlaced, poured, routineAt } from '../husbandry.ts'
import { median, resampled } from './courses.ts'
import { presentOf } from './past-of-case.ts'

/** Media that take less than this share of what fresh media would take of the same water are spent. */
const spentShare = 0.1

/** Median of the days from placing to spent; Infinity where more than half of the members are not spent by then. */
export function exhaustedAfter(file: CaseFile, daysAhead: number): number {
  const placed = lastPlaced(file)
  if (placed === undefined) return Number.POSITIVE_INFINITY
  const { known, question } = presentOf(file)
  const few = resampled(known)
  const from = Math.max(question.from, anHourLater(noon(placed)))
  const to = question.asOf + daysAhead
  const days: readonly Day[] = Array.from({ length: Math.floor(to - from) + 1 }, (_, day) => from + day)
  const moments = timeline({
    ...question,
    system: few.model.system,
    facts: few.model.facts,
    from: Math.min(question.from, from),
    to,
  })
  const spent = few.members.map(({ parameters, scores }) => {
    const settings = settingsOn(few.model, moments, from + 1e-6)
    const start = startOf(
      few.model,
      parameters,
      openingOn(question, from, scores, few.model.facts),
      from,
      settings,
    )
    const run = simulate({
      model: few.model,
      parameters,
      start,
      settings,
      from,
      to,
      samples: days,
      timeline: moments.filter(({ day }) => day > from && day < to),
    })
    const share = mediumLeft(few.model, parameters, run.settings)
    // The first days fill the surface; a share that is low for good is what counts.
    const lastAbove = run.samples.findLastIndex((states) => share(states) >= spentShare)
    return lastAbove === run.samples.length - 1 ? Number.POSITIVE_INFINITY : lastAbove + 1
  })
  const ended = spent.filter(Number.isFinite)
  if (ended.length * 2 <= spent.length) return Number.POSITIVE_INFINITY
  return (
    median(
      spent.map((day) => (Number.isFinite(day) ? day : 1e6)),
      few.weights.of,
    ) +
    (from - anHourLater(noon(placed)))
  )
}

/** Median share of the drop by a change of the usual size today that is undone after `days`, nothing else changed. */
export function reboundOfChange(file: CaseFile, days: number): number {
  const { known, question } = presentOf(file)
  const { model } = known
  const told = eventsOf(file, 'water change').at(-1)
  const volume_L = Number(told?.volume_L ?? routineAt(file, file.asof)?.volume_L ?? 0.2 * waterVolume(file))
  const fraction = volume_L / waterVolume(file)
  const phosphate = known.seen.find(({ quantity }) => quantity === 'phosphate')
  const water = poured(file, 'source water + salt')
  const day = anHourLater(question.asOf)
  const change = { day, kind: 'water change' as const, volume_L, water }
  const unroutined = {
    ...model.system,
    equipment: model.system.equipment.filter(({ kind }) => kind !== 'water change'),
  }
  const moments = timeline({
    ...question,
    system: unroutined,
    events: [change],
    from: question.asOf,
    to: question.asOf + days + 1,
  })
  const shares = known.members.map(({ parameters, states, settings }) => {
    const run = simulate({
      model,
      parameters,
      start: states,
      settings,
      from: question.asOf,
      to: question.asOf + days + 1,
      samples: [question.asOf + days],
      timeline: moments,
    })
    const before = phosphate?.of(states, parameters) ?? Number.NaN
    const low = before - fraction * (before - water.PO4_mg_L)
    const [after] = run.samples
    const later = after === undefined ? Number.NaN : (phosphate?.of(after, parameters) ?? Number.NaN)
    return (later - low) / (before - low)
  })
  return median(shares, known.weights.of)
}
