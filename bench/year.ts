/** A year of one member at equal accuracy: ours, and solvers of others on the same equations. */
import { type IntegratorSettings, simulate, simulateTogether, usualSettings } from '@holdfast/ecosystem'
import { type CvodeProgram, cvodeProgram } from '@holdfast/ecosystem/build/cvode/run-cvode'
import { desolveRun } from '@holdfast/ecosystem/build/desolve/run-desolve'
import { scipyRun } from '@holdfast/ecosystem/build/scipy/run-scipy'
import { type Accuracy, accuracy, worst } from './accuracy.ts'
import { type BenchmarkRun, benchmarkRun } from './benchmark-system.ts'
import { processorTime } from './processor-time.ts'
import { table } from './table.ts'

/** The accuracy at which solvers are compared. */
const equal = 0.01
/** A scripted right-hand side is slow: its solver gets these days, and is scaled to the year. */
const scriptedDays = 10
/** Loosest tolerances at which each comes within 1 % on these days; the quickest is taken. */
const scripted = [
  ['SciPy', 'RK23', 1e-4],
  ['SciPy', 'RK45', 1e-4],
  ['SciPy', 'LSODA', 1e-6],
  ['deSolve', 'adams', 1e-4],
] as const

/** Members side by side, of which each is timed. */
const lanes = 8

interface Row {
  readonly name: string
  readonly ms: number
  /** Each of several members side by side. */
  readonly inLanes?: number
  readonly off?: Accuracy
}

export function yearBench(): void {
  const question = benchmarkRun()
  const { model, timeline } = question
  const { statistics } = simulate(question)
  console.log(
    `${model.states.length} states, ${model.fluxes.length} flows, ${timeline.length} moments a year; ours: ${statistics.steps} steps, ${statistics.rejected} rejected, ${statistics.limited} limited, ${statistics.evaluations} evaluations.`,
  )
  const program = cvodeProgram(model, question)
  if ('missing' in program) {
    console.log(`No reference and so no accuracy: ${program.missing}`)
    print([{ name: 'ours as used', ms: processorTime(() => simulate(question)) }])
    return
  }
  const reference = program.run({ tolerance: 1e-8 }).samples
  const off = (samples: readonly Float64Array[]): Accuracy => accuracy(model, samples, reference)
  const rows = [...ourRows(question, off), ...cvodeRows(program, off)]
  program.remove()
  print([...rows, ...scriptedRows(question)])
}

/** As used, and where that is not accurate enough as strict as it must be. */
function ourRows(
  question: BenchmarkRun,
  off: (samples: readonly Float64Array[]) => Accuracy,
): readonly [Row, ...Row[]] {
  const row = (tolerance: number): Row => {
    const integrator: IntegratorSettings = { ...usualSettings, tolerance }
    const run = { ...question, integrator }
    const members = Array.from({ length: lanes }, () => question)
    return {
      name: `ours at ${tolerance}, alone`,
      ms: processorTime(() => simulate(run)),
      inLanes: processorTime(() => simulateTogether(run, members)) / lanes,
      off: off(simulate(run).samples),
    }
  }
  const usual = row(usualSettings.tolerance)
  const rows: [Row, ...Row[]] = [usual]
  for (const part of [0.7, 0.5, 0.2]) {
    if (rows.some((one) => one.off && worst(one.off) <= equal)) break
    rows.push(row(part * usualSettings.tolerance))
  }
  return rows
}

/** Tolerances from loose to strict, until one is accurate enough. */
function cvodeRows(
  program: CvodeProgram,
  off: (samples: readonly Float64Array[]) => Accuracy,
): readonly Row[] {
  const rows: Row[] = []
  for (const tolerance of [1e-2, 3e-3, 2e-3, 1e-3, 5e-4, 2e-4]) {
    const runs = [program.run({ tolerance }), program.run({ tolerance, repeats: 3 })]
    rows.push({
      name: `CVODE in C, KLU, at ${tolerance}`,
      ms: 1000 * Math.min(...runs.map(({ seconds }) => seconds)),
      off: off(runs[0].samples),
    })
    if (rows.some((row) => row.off && worst(row.off) <= equal)) break
  }
  return rows
}

/** Solvers with a scripted right-hand side that are accurate enough, over some days, as if the year went on like them. */
function scriptedRows(question: BenchmarkRun): readonly Row[] {
  const short = benchmarkRun(scriptedDays)
  const settings: IntegratorSettings = { ...usualSettings, tolerance: 1e-7 }
  const reference = simulate({ ...short, integrator: settings }).samples
  return scripted.flatMap(([library, method, tolerance]): readonly Row[] => {
    const run =
      library === 'SciPy'
        ? scipyRun(short.model, short, { method, tolerance })
        : desolveRun(short.model, short, { method, tolerance })
    if ('missing' in run) {
      console.log(run.missing)
      return []
    }
    const ms = (1000 * run.seconds * question.to) / scriptedDays
    const off = accuracy(short.model, run.samples, reference)
    return [{ name: `${library} ${method} at ${tolerance}, from ${scriptedDays} days`, ms, off }]
  })
}

function print(rows: readonly Row[]): void {
  const accurate = (row: Row): boolean => row.off !== undefined && worst(row.off) <= equal
  const base = rows.find(accurate) ?? rows[0]
  const percent = (share: number | undefined): string =>
    share === undefined ? '?' : `${(100 * share).toPrecision(2)} %`
  const ratio = (ms: number | undefined): string =>
    base.inLanes === undefined || ms === undefined ? '' : (ms / base.inLanes).toFixed(1)
  console.log()
  console.log(
    table([
      [
        'a year for one member, of the processor',
        'ms',
        'ratio',
        'in lanes',
        'ratio',
        'nitrate',
        'phosphate',
        'cover',
        '',
      ],
      ...rows.map((row) => [
        row.name,
        row.ms.toFixed(1),
        (row.ms / base.ms).toFixed(1),
        row.inLanes?.toFixed(1) ?? '',
        row === base ? '1.0' : ratio(row.inLanes ?? row.ms),
        percent(row.off?.nitrate),
        percent(row.off?.phosphate),
        percent(row.off?.cover),
        row.off && !accurate(row) ? 'not accurate enough' : '',
      ]),
    ]),
  )
  console.log(
    `\nRatios are to ours at ${100 * equal} %, alone and each of ${lanes} in lanes. To reach: CVODE 5 and 10, scripted 200.`,
  )
}
