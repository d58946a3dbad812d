/** Many members: 500 over 90 days, a lever dragged, memory. */
import { Worker } from 'node:worker_threads'
import { usualSettings } from '@holdfast/ecosystem'
import { weightedQuantiles } from '@holdfast/inference'
import { type BenchmarkRun, benchmarkRun } from './benchmark-system.ts'
import { type Course, daily, runShare, type Seen, type Share, seenIn } from './share.ts'
import { table } from './table.ts'

const horizon = 90
/** After so many members memory is read. */
const batch = 20
const levels = [0.05, 0.25, 0.5, 0.75, 0.95]

/** @param members  500 are asked for; fewer where time is short */
export async function ensembleBench(members: number): Promise<void> {
  const run = benchmarkRun(horizon)
  const whole = { first: 0, count: members, days: horizon }
  runShare(run, { ...whole, count: 2 })
  const began = performance.now()
  const all: Course[] = []
  let memory = 0
  for (let first = 0; first < members; first += batch) {
    all.push(...runShare(run, { ...whole, first, count: Math.min(batch, members - first) }))
    memory = Math.max(memory, process.memoryUsage.rss() / 1e6)
  }
  const one = performance.now() - began
  const two = await inWorkers(whole, 2)
  const first16 = await inWorkers({ ...whole, count: 16 }, 1)
  const first64 = await inWorkers({ ...whole, count: 64 }, 2)
  const steps = all.reduce((sum, { statistics }) => sum + statistics.steps, 0)
  const limited = all.reduce((sum, { statistics }) => sum + statistics.limited, 0)
  const evaluations = all.reduce((sum, { statistics }) => sum + statistics.evaluations, 0)
  const quick = all.reduce((sum, { statistics }) => sum + statistics.quickEvaluations, 0)
  console.log(
    table([
      [`${members} members x ${horizon} days`, 'measured', 'to reach'],
      ['on one core, s', (one / 1000).toFixed(2), '2.5'],
      ['on two, s', (two / 1000).toFixed(2), '1.3'],
      ['each member and day, µs', ((1000 * one) / (members * horizon)).toFixed(0), '55'],
      ['evaluations a member and day', (evaluations / (members * horizon)).toFixed(1), ''],
      ['of quick processes', (quick / (members * horizon)).toFixed(0), ''],
      ['steps that were limited', `${((100 * limited) / steps).toFixed(3)} %`, '0.1 %'],
      ['memory of the program, MB', memory.toFixed(0), '200'],
      ['a lever: 16 members on one core, ms', first16.toFixed(0), '50'],
      ['a lever: 64 members on two cores, ms', first64.toFixed(0), '200'],
    ]),
  )
  accuracyOf(run, all)
}

/** Shares of the members in warm workers, side by side; ms until the last is done. */
async function inWorkers({ count, days }: Share, workers: number): Promise<number> {
  const each = count / workers
  const started = Array.from({ length: workers }, () => new Worker(process.argv[1]))
  const ask = (worker: Worker, share: Share): Promise<unknown> =>
    new Promise((resolve, reject) => {
      worker.once('message', resolve)
      worker.once('error', reject)
      worker.postMessage(share)
    })
  const shares = started.map((_, n): Share => ({ first: n * each, count: each, days }))
  // Warm: the model is assembled and the kernel compiled, as they are while a lever is dragged.
  await Promise.all(started.map((worker, n) => ask(worker, { ...shares[n], count: 2 })))
  const times: number[] = []
  for (let time = 0; time < 3; time++) {
    const began = performance.now()
    await Promise.all(started.map((worker, n) => ask(worker, shares[n])))
    times.push(performance.now() - began)
  }
  await Promise.all(started.map((worker) => worker.terminate()))
  return Math.min(...times)
}

/** Quantiles of some members beside those of a strict run of the same, against the width of the band. */
function accuracyOf(run: BenchmarkRun, all: readonly Course[]): void {
  const some = all.slice(0, 32)
  const share = { first: 0, count: some.length, days: horizon }
  const strict = runShare(run, share, { ...usualSettings, tolerance: 1e-6 })
  const names = seenIn(run).map(({ name }) => name)
  const off = (which: number): number =>
    Math.max(
      ...daily(horizon).map((_, day) => {
        const ours = quantiles(some.map(({ seen }) => seen[which][day]))
        const theirs = quantiles(strict.map(({ seen }) => seen[which][day]))
        const width = theirs[theirs.length - 1] - theirs[0]
        return Math.max(...ours.map((value, q) => Math.abs(value - theirs[q]))) / width
      }),
    )
  const most = (name: Seen['name']): number =>
    Math.max(...names.flatMap((one, which) => (one === name ? [off(which)] : [])))
  const percent = (share: number): string => `${(100 * share).toPrecision(2)} %`
  console.log()
  console.log(
    table([
      [`quantiles of ${some.length} members, off by a share of the band`, 'most', 'to reach'],
      ['nitrate', percent(most('nitrate')), '2 %'],
      ['phosphate', percent(most('phosphate')), '2 %'],
      ['cover of any kind on any surface', percent(most('cover')), '2 %'],
    ]),
  )
}

const quantiles = (values: readonly number[]): readonly number[] =>
  weightedQuantiles(
    values,
    values.map(() => 1 / values.length),
    levels,
  )
