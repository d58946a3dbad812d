/** What a reading of an experiment comes to in one run of one member. */
import {
  coverOf,
  dissolvedOrganicCarbon_mg_L,
  type Model,
  patches,
  patchShare,
  type Simulation,
  stateId,
  stateIndex,
} from '@holdfast/ecosystem'
import { convert } from '@holdfast/quantities'
import type { Reading } from './experiment-file.ts'
import { named } from './named.ts'

/** States are kept so many times a day. */
export const samplesPerDay = 4

export interface MemberOfRun {
  readonly model: Model
  readonly parameters: Float64Array
  readonly simulation: Simulation
}

/** The number, in the unit that the reading asks for. */
export function read(reading: Reading, run: MemberOfRun): number {
  const { model, parameters, simulation } = run
  switch (reading.read) {
    case 'concentration':
      return over(
        reading,
        run,
        sumOf(model, reading.of),
        convert(1, 'µmol L⁻¹', reading.unit) / model.volume_L,
      )
    case 'amount':
      return over(
        reading,
        run,
        sumOf(model, reading.of),
        convert(1, 'µmol', reading.unit) / (reading.per ?? 1),
      )
    case 'cover':
      return over(reading, run, coverIn(model, parameters, reading.surface, reading.algae), 1)
    case 'organic carbon':
      return over(reading, run, (states) => dissolvedOrganicCarbon_mg_L(model, states), 1)
    case 'living': {
      const index = stateIndex(model, `living.${reading.taxon}`)
      return over(reading, run, (states) => states[index], 1)
    }
    case 'flow': {
      const per_day = flow(reading, run) / (reading.to - reading.from)
      return convert(per_day, 'µmol d⁻¹', reading.unit) / (reading.per ?? 1)
    }
    case 'day of share': {
      const sum = sumOf(model, reading.of)
      const course = simulation.samples.map(sum)
      const most = Math.max(...course)
      return course.findIndex((held) => held >= reading.share * most) / samplesPerDay
    }
  }
}

type Span = { readonly on?: number; readonly from?: number; readonly to?: number }

/** On its day, or the mean over its days. */
function over(
  { on, from, to }: Span,
  { simulation }: MemberOfRun,
  of: (states: Float64Array) => number,
  factor: number,
): number {
  const first = Math.round((on ?? from ?? 0) * samplesPerDay)
  const last = Math.round((on ?? to ?? 0) * samplesPerDay)
  const within = simulation.samples.slice(first, last + 1)
  return (within.reduce((sum, states) => sum + of(states), 0) / within.length) * factor
}

function sumOf(model: Model, names: readonly string[]): (states: Float64Array) => number {
  const tests = names.map(named)
  const places = model.states.flatMap((state, k) => (tests.some((test) => test(stateId(state))) ? [k] : []))
  return (states) => places.reduce((sum, k) => sum + Math.max(0, states[k]), 0)
}

function coverIn(
  model: Model,
  parameters: Float64Array,
  surfaceId: string,
  algae: readonly string[],
): (states: Float64Array) => number {
  const surface = model.system.surfaces.find(({ id }) => id === surfaceId)
  if (surface === undefined) return () => Number.NaN
  const parts = patches.flatMap((patch) =>
    algae.map((kind) => ({
      on: coverOf(model, { surface: surfaceId, kind, patch }),
      share: patchShare(surface, patch, model.facts),
    })),
  )
  return (states) => parts.reduce((sum, { on, share }) => sum + share * on(states, parameters), 0)
}

/** µmol between two days, of the flows that are meant. */
function flow(
  { atom, process, out, into, from, to }: Extract<Reading, { read: 'flow' }>,
  { model, simulation: { marks } }: MemberOfRun,
): number {
  const [first, last] = [from, to].map((day) => marks.find((mark) => mark.day === day))
  if (first === undefined || last === undefined) return Number.NaN
  const isOut = out === undefined ? () => true : named(out)
  const isInto = into === undefined ? () => true : named(into)
  const isProcess = process === undefined ? () => true : named(process)
  const account = (index: number): string => stateId(model.states[index]).split('/')[0] ?? ''
  const meant = (flux: Model['fluxes'][number]): boolean =>
    flux.atom === atom && isProcess(flux.process.id) && isOut(account(flux.from)) && isInto(account(flux.to))
  const sum = (fluxes: Model['fluxes'], since: ArrayLike<number>, until: ArrayLike<number>): number =>
    fluxes.reduce((total, flux, k) => (meant(flux) ? total + until[k] - since[k] : total), 0)
  return (
    sum(model.fluxes, first.flows, last.flows) + sum(model.eventFluxes, first.eventFlows, last.eventFlows)
  )
}
