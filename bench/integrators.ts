/** A year of the benchmark system at equal accuracy: the shipped integrator, and methods that it was weighed against. */
import { simulate, usualSettings } from '@holdfast/ecosystem'
import { cvodeProgram, equationsInC } from '@holdfast/ecosystem/build/cvode/run-cvode'
import { type MethodRun, type Methods, methodsInC } from '@holdfast/ecosystem/build/methods/run-methods'
import { type Accuracy, accuracy, worst } from './accuracy.ts'
import { type BenchmarkRun, benchmarkRun } from './benchmark-system.ts'
import { processorTime } from './processor-time.ts'
import { table } from './table.ts'

/** With all derivatives, or without those by shared sums, which only a method that takes any matrix may leave out. */
const candidates = [
  ['RKC2', 'sparse'],
  ['ROCK2', 'sparse'],
  ['RODAS3', 'exact'],
  ['ROS34PW2', 'sparse'],
  ['MPRK22', 'sparse'],
] as const

/** The accuracy at which methods are compared. */
const equal = 0.01
const days = 365

interface Row {
  readonly name: string
  readonly run: MethodRun
  readonly off: Accuracy
}

export function integratorsBench(): void {
  const question = benchmarkRun(days)
  const { model } = question
  const cvode = cvodeProgram(model, question)
  const methods = methodsInC(equationsInC(model, question))
  if ('missing' in cvode || 'missing' in methods) {
    console.log('missing' in cvode ? cvode.missing : 'missing' in methods ? methods.missing : '')
    return
  }
  const reference = cvode.run({ tolerance: 1e-8 }).samples
  cvode.remove()
  const off = (samples: readonly Float64Array[]): Accuracy => accuracy(model, samples, reference)
  const rows = [
    shipped(question, off),
    ...candidates.map(([method, matrix]) => loosest(methods, method, matrix, off)),
  ]
  methods.remove()
  print(rows)
}

function shipped(question: BenchmarkRun, off: (samples: readonly Float64Array[]) => Accuracy): Row {
  const integrator = { ...usualSettings, tolerance: 0.7 * usualSettings.tolerance }
  const run = { ...question, integrator }
  const seconds = processorTime(() => simulate(run)) / 1000
  const { samples, statistics } = simulate(run)
  return {
    name: `shipped, ${integrator.tolerance}`,
    run: { ...statistics, seconds, factorizations: 0, samples },
    off: off(samples),
  }
}

/** The loosest tolerance that is accurate enough, or the strictest tried. */
function loosest(
  { run }: Methods,
  method: string,
  matrix: string,
  off: (samples: readonly Float64Array[]) => Accuracy,
): Row {
  const rows: Row[] = []
  for (const tolerance of [3e-2, 1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 1e-5]) {
    const came = run([method, tolerance, matrix === 'exact' ? 1 : 3, matrix])
    rows.push({ name: `${method}, ${tolerance}`, run: came, off: off(came.samples) })
    if (worst(rows[rows.length - 1].off) <= equal) break
  }
  return rows[rows.length - 1]
}

function print(rows: readonly Row[]): void {
  const percent = (share: number): string => `${(100 * share).toPrecision(2)} %`
  const a = (count: number): string => (count / days).toFixed(1)
  console.log(
    table([
      [
        'a year',
        'ms',
        'ratio',
        'steps a day',
        'refused',
        'evaluations',
        'factors',
        'nitrate',
        'phosphate',
        'cover',
        '',
      ],
      ...rows.map(({ name, run, off }) => [
        name,
        (1000 * run.seconds).toFixed(0),
        (run.seconds / rows[0].run.seconds).toFixed(1),
        ...[run.steps, run.rejected, run.evaluations, run.factorizations].map(a),
        ...[off.nitrate, off.phosphate, off.cover].map(percent),
        worst(off) > equal ? 'not accurate enough' : '',
      ]),
    ]),
  )
}
