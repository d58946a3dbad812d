/** Runs the model under the conditions of an experiment, over all that the catalogue does not know. */
import { simulateTogether, startOf, stateIndex, timeline } from '@holdfast/ecosystem'
import { nothingUnexplained } from '@holdfast/ecosystem/testing/run'
import { drawMember, weightedQuantiles } from '@holdfast/inference'
import { convert } from '@holdfast/quantities'
import type { Measured, Reading } from './experiment-file.ts'
import type { Arm, Experiment } from './read-experiment.ts'
import { type MemberOfRun, read, samplesPerDay } from './readings.ts'

/** Draws of every fact within its band. */
export const draws = 60
export const seed = 1

/** One measurement beside the model. */
export interface Row {
  readonly measured: Measured
  /** 5 %, middle and 95 % of the members. */
  readonly low: number
  readonly middle: number
  readonly high: number
  /** Of a figure: the band reaches into it. Of a side: the middle lies on it. */
  readonly holds: boolean
  /** Whether the middle is as near as the file asks; so where it does not ask. */
  readonly near: boolean
}

/**
 * The rows of an experiment. Each fact is drawn once for all treatments, so that a ratio between them is one
 * member's. What stands in for the unexplained in a keeper's tank is off: nobody measured it.
 */
export function runExperiment({ document, arms }: Experiment): readonly Row[] {
  const { days, measured } = document
  const marks = [
    ...new Set(
      measured
        .flatMap(({ of, over }) => [of, over])
        .flatMap((one) => (one?.read === 'flow' ? [one.from, one.to] : [])),
    ),
  ].sort((a, b) => a - b)
  const runs = new Map(arms.map((arm) => [arm.name, runArm(arm, days, marks)]))
  const first = arms[0].name
  const values = (reading: Reading): readonly number[] =>
    (runs.get(reading.in ?? first) ?? []).map((member) => read(reading, member))
  return measured.map((one) => {
    const above = values(one.of)
    const under = one.over === undefined ? undefined : values(one.over)
    return rowOf(one, under === undefined ? above : above.map((value, m) => value / under[m]))
  })
}

function runArm(arm: Arm, days: number, marks: readonly number[]): readonly MemberOfRun[] {
  const { model, system, events } = arm
  const members = Array.from({ length: draws }, (_, member) => {
    const parameters = drawMember(model, seed, member)
    const fixed = new Map([...Object.entries(nothingUnexplained), ...Object.entries(arm.set)])
    for (const [k, { fact, factor }] of model.parameters.entries()) {
      const value = fixed.get(fact)
      if (value !== undefined) parameters[k] = value * factor
    }
    return { parameters, start: startIn(arm, parameters) }
  })
  const simulations = simulateTogether(
    {
      model,
      from: 0,
      to: days,
      timeline: timeline({ system, events, from: 0, to: days, asOf: 0 }),
      samples: Array.from({ length: Math.floor(days * samplesPerDay) + 1 }, (_, n) => n / samplesPerDay),
      marks,
    },
    members,
  )
  return members.map(({ parameters }, m) => ({ model, parameters, simulation: simulations[m] }))
}

function startIn({ model, start, stocks }: Arm, parameters: Float64Array): Float64Array {
  const to = (amount: number | undefined, unit: string): number => convert(amount ?? 0, 'µmol L⁻¹', unit)
  const states = startOf(
    model,
    parameters,
    {
      nitrate_mg_L: to(start.nitrate, 'mg NO3 L⁻¹'),
      phosphate_mg_L: to(start.phosphate, 'mg PO4 L⁻¹'),
      ammonia_mg_N_L: to(start.ammonia, 'mg N L⁻¹'),
      nitrite_mg_L: to(start.nitrite, 'mg NO2 L⁻¹'),
    },
    0,
  )
  for (const [id, amount] of Object.entries(stocks)) states[stateIndex(model, id)] = amount
  return states
}

function rowOf(measured: Measured, values: readonly number[]): Row {
  const known = values.filter((value) => !Number.isNaN(value))
  const [low, middle, high] = weightedQuantiles(
    known,
    known.map(() => 1 / known.length),
    [0.05, 0.5, 0.95],
  )
  const { value, above, below, within = Number.POSITIVE_INFINITY } = measured
  if (value === undefined) {
    const holds = (above === undefined || middle > above) && (below === undefined || middle < below)
    return { measured, low, middle, high, holds, near: true }
  }
  const [least, most] = [measured.low ?? value, measured.high ?? value]
  return {
    measured,
    low,
    middle,
    high,
    holds: low <= most && high >= least,
    near: middle <= most * within && middle >= least / within,
  }
}

/** Whether a row is as its file says it would be: held and near. */
export const agrees = ({ holds, near }: Row): boolean => holds && near
