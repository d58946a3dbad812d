/** How cost grows with members, days and size: linearly, or one would see it here. */
import { benchmarkRun, benchmarkSystem } from './benchmark-system.ts'
import { processorTime } from './processor-time.ts'
import { runShare } from './share.ts'
import { table } from './table.ts'

interface Size {
  readonly surfaces: number
  readonly kinds: number
  readonly members: number
  readonly days: number
}

const usual: Size = { surfaces: 9, kinds: 5, members: 4, days: 30 }

const sizes: readonly Size[] = [
  ...[4, 16, 64].map((members) => ({ ...usual, members })),
  ...[90, 365].map((days) => ({ ...usual, days })),
  { ...usual, surfaces: 3 },
  { ...usual, surfaces: 15 },
  { ...usual, kinds: 10 },
  { ...usual, surfaces: 20, kinds: 15 },
]

/** One line for each size: time for each member and day, and for each flow of it. */
export function growthBench(): void {
  const rows = sizes.map(({ surfaces, kinds, members, days }) => {
    const run = benchmarkRun(days, benchmarkSystem(surfaces, kinds))
    const { states, fluxes } = run.model
    const ms = processorTime(() => runShare(run, { first: 0, count: members, days }))
    const each = (1000 * ms) / (members * days)
    return [
      `${surfaces} x 3 x ${kinds}`,
      ...[states.length, fluxes.length, members, days].map(String),
      each.toFixed(0),
      ((1000 * each) / fluxes.length).toFixed(0),
    ]
  })
  const head = [
    'surfaces x patches x kinds',
    'states',
    'flows',
    'members',
    'days',
    'µs a member and day',
    'ns a flow of it',
  ]
  console.log(table([head, ...rows]))
}
