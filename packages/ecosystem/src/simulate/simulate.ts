import type { Block, Model } from '../assemble/model.ts'
import { scatter } from '../integrate/equations.ts'
import {
  between,
  bookBetween,
  Integrator,
  type IntegratorSettings,
  type Statistics,
  type Step,
  usualSettings,
} from '../integrate/index.ts'
import { limit, limiterWork } from '../integrate/limiter.ts'
import type { Day } from '../log.ts'
import { ends, equationsOf } from './equations-of.ts'
import type { Happening, Moment, Values } from './moment.ts'

export interface SimulationQuestion {
  readonly model: Model
  readonly parameters: Float64Array
  /** States at the start; left as they are. */
  readonly start: Float64Array
  readonly from: Day
  readonly to: Day
  readonly timeline: readonly Moment[]
  /** Days at which the states are wanted, in order. */
  readonly samples?: readonly Day[]
  /** Days at which the sums of flows are wanted, in order; no step is cut for them. */
  readonly marks?: readonly Day[]
  /** Settings other than those of the system, such as from an earlier run. */
  readonly settings?: Float64Array
  readonly integrator?: IntegratorSettings
}

export interface Simulation {
  readonly samples: readonly Float64Array[]
  readonly marks: readonly Mark[]
  readonly end: Float64Array
  readonly settings: Float64Array
  readonly statistics: Statistics
}

/** The books at one day: states, and what has flowed since the start. */
export interface Mark {
  readonly day: Day
  readonly states: Float64Array
  readonly flows: Float64Array
  readonly eventFlows: Float64Array
}

/** Runs a model over a span, through its events. A sample on the day of an event is taken before it. */
export function simulate(question: SimulationQuestion): Simulation {
  const { model, from, to } = question
  const settings = Float64Array.from(question.settings ?? model.settings.values)
  const equations = equationsOf(model, question.parameters, settings)
  const integrator = new Integrator(
    equations,
    Float64Array.from(question.start),
    question.integrator ?? usualSettings,
  )
  const eventFlows = new Float64Array(model.eventFluxes.length)
  const samples: Float64Array[] = []
  const marks: Mark[] = []
  const wanted = question.samples ?? []
  const markDays = question.marks ?? []
  const slots = new Map(model.settings.ids.map((id, index) => [id, index]))
  const happen = eventsOf(model, question.parameters, settings, slots, eventFlows)

  const onStep = (step: Step): void => {
    while (samples.length < wanted.length && wanted[samples.length] <= step.to) {
      const into = new Float64Array(model.states.length)
      between(step, wanted[samples.length], into)
      samples.push(into)
    }
    while (marks.length < markDays.length && markDays[marks.length] <= step.to)
      marks.push(bookAt(step, markDays[marks.length]))
  }
  const bookAt = (step: Step, day: Day): Mark => {
    const flows = new Float64Array(model.fluxes.length)
    const states = new Float64Array(model.states.length)
    bookBetween(step, day, equations, flows, states)
    for (let k = 0; k < flows.length; k++) flows[k] += step.totals[k]
    return { day, states, flows, eventFlows: Float64Array.from(eventFlows) }
  }
  const mark = (day: Day): void => {
    while (marks.length < markDays.length && markDays[marks.length] <= day)
      marks.push({
        day,
        states: Float64Array.from(integrator.y),
        flows: Float64Array.from(integrator.totals),
        eventFlows: Float64Array.from(eventFlows),
      })
  }
  const sampleNow = (day: Day): void => {
    while (samples.length < wanted.length && wanted[samples.length] <= day)
      samples.push(Float64Array.from(integrator.y))
  }

  let day = from
  sampleNow(day)
  mark(day)
  const advance = (until: Day): void => {
    if (day < until) integrator.run(day, until, onStep)
    day = Math.max(day, until)
  }
  for (const moment of question.timeline) {
    if (moment.day >= to) break
    advance(moment.day)
    if ('happens' in moment) happen(moment, integrator.y)
    else change(settings, slots, moment)
  }
  advance(to)
  sampleNow(to)
  mark(to)
  return { samples, marks, end: integrator.y, settings, statistics: integrator.statistics }
}

/** The settings of a day: those of the description, and what was changed before that day. */
export function settingsOn(model: Model, moments: readonly Moment[], day: Day): Float64Array {
  const settings = Float64Array.from(model.settings.values)
  const slots = new Map(model.settings.ids.map((id, index) => [id, index]))
  for (const moment of moments)
    if (moment.day < day && !('happens' in moment)) change(settings, slots, moment)
  return settings
}

/** Changes settings as a moment says; one that the model does not read is nothing to it, and none falls below zero by a loss. */
function change(
  settings: Float64Array,
  slots: ReadonlyMap<string, number>,
  moment: Exclude<Moment, Happening>,
): void {
  const each = (values: Values, become: (now: number, value: number) => number): void => {
    for (const [id, value] of Object.entries(values)) {
      const slot = slots.get(id)
      if (slot !== undefined) settings[slot] = become(settings[slot], value)
    }
  }
  if ('set' in moment) each(moment.set, (_, value) => value)
  else if ('add' in moment) each(moment.add, (now, value) => Math.max(0, now + value))
  else each(moment.multiply, (now, value) => now * value)
}

/** Events are flows at an instant: worked out from the states before, limited alike, added whole. */
function eventsOf(
  model: Model,
  parameters: Float64Array,
  settings: Float64Array,
  slots: ReadonlyMap<string, number>,
  sums: Float64Array,
): (moment: Happening, y: Float64Array) => void {
  const all = new Float64Array(model.eventFluxes.length)
  const none = new Float64Array(0)
  const work = limiterWork(model.states.length)
  const equations = {
    states: model.states.length,
    fluxes: model.eventFluxes.length,
    ...ends(model.eventFluxes),
    floored: Uint8Array.from(model.states, (entry) =>
      entry.kind === 'plain' || entry.account.side === 'inside' ? 1 : 0,
    ),
    tolerance: none,
    rates: () => undefined,
  }
  const apply = (block: Block, y: Float64Array): void => {
    all.fill(0)
    const { compiled, inputs, names, firstFlux } = block
    for (let n = 0; n < names.length; n++)
      compiled.rates(
        y,
        settings,
        parameters,
        none,
        inputs,
        n * compiled.inputs,
        all,
        firstFlux + n * compiled.fluxes,
      )
    limit(equations, y, all, work)
    scatter(equations, all, y)
    for (let k = 0; k < all.length; k++) sums[k] += all[k]
  }
  return (moment, y) => {
    const block = model.events.get(moment.happens)
    if (!block) return
    const before = Float64Array.from(settings)
    change(settings, slots, { day: moment.day, set: moment.with })
    apply(block, y)
    settings.set(before)
  }
}
