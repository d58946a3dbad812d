import { askWater } from '@holdfast/seawater'
import type { Check } from './check.ts'
import { askGsw, type Point } from './gsw/run-gsw.ts'

interface Comparison {
  /** Name of the list that gsw/compare.py gives. */
  readonly gsw: string
  readonly quantity: string
  readonly inputs: (point: Point) => Readonly<Record<string, number>>
  readonly tolerance: number
  /** Why as much as that may lie between the two. */
  readonly because: string
}

const sameEquation = 'same equation, other order of sums'

const comparisons: readonly Comparison[] = [
  {
    gsw: 'absolute_salinity',
    quantity: 'absolute_salinity',
    inputs: ({ S }) => ({ S }),
    tolerance: 1e-11,
    because: sameEquation,
  },
  {
    gsw: 'density_at_surface',
    quantity: 'density_teos10',
    inputs: ({ S, t }) => ({ S, t }),
    tolerance: 1e-9,
    because: sameEquation,
  },
  {
    gsw: 'density_at_pressure',
    quantity: 'density_teos10',
    inputs: ({ S, t, p }) => ({ S, t, p }),
    tolerance: 1e-9,
    because: sameEquation,
  },
  {
    gsw: 'density_75_terms',
    quantity: 'density_teos10',
    inputs: ({ S, t }) => ({ S, t }),
    tolerance: 0.001,
    because: 'their 75 terms are a fit to the Gibbs function that we take itself',
  },
  {
    gsw: 'density_at_surface',
    quantity: 'density_eos80',
    inputs: ({ S, t }) => ({ S, t }),
    tolerance: 0.008,
    because: 'equations of 1981 and 2008; the first has a standard error of 0.0036',
  },
  {
    gsw: 'freezing_point',
    quantity: 'freezing_point',
    inputs: ({ S }) => ({ S }),
    tolerance: 0.005,
    because: 'equations of 1978 and 2010; the first is true to 0.004 K',
  },
  {
    gsw: 'oxygen_saturation',
    quantity: 'oxygen_saturation',
    inputs: ({ S, t }) => ({ S, t }),
    tolerance: 0.05,
    because: 'they put IPTS-68 into the equation and we ITS-90, up to 0.008 K apart',
  },
  {
    gsw: 'salinity_of_conductivity',
    quantity: 'practical_salinity',
    inputs: ({ C, t, p }) => ({ C, t, p }),
    tolerance: 1e-11,
    because: sameEquation,
  },
  {
    gsw: 'conductivity',
    quantity: 'conductivity',
    inputs: ({ S, t, p }) => ({ S, t, p }),
    tolerance: 1e-9,
    because: 'they end an iteration, we halve to the last bit',
  },
]

/** Our sea water beside the TEOS-10 library, at 4000 seeded points. */
export function againstGsw(): readonly Check[] {
  const points = seededPoints(4000)
  const found = askGsw(points)
  if ('missing' in found) return [{ name: 'sea water beside GSW', outcome: 'skipped', says: found.missing }]
  return comparisons.map((comparison) => compared(comparison, points, found.answers, found.version))
}

function compared(
  { gsw, quantity, inputs, tolerance, because }: Comparison,
  points: readonly Point[],
  answers: Readonly<Record<string, readonly number[]>>,
  version: string,
): Check {
  const theirs = answers[gsw] ?? []
  let largest = 0
  let both = 0
  let unit = ''
  points.forEach((point, at) => {
    const ours = askWater(quantity, inputs(point))
    // Conductivity drawn at random is now and then water that the practical scale does not cover.
    if (!ours.ok) return
    unit = ours.unit === '1' ? '' : ` ${ours.unit}`
    both += 1
    // A missing answer is no number, stays so, and fails the comparison.
    largest = Math.max(largest, Math.abs(ours.value - (theirs[at] ?? Number.NaN)))
  })
  // A comparison of few points would say nothing.
  const enough = both >= points.length / 2
  return {
    name: `${quantity} beside GSW ${version} ${gsw}`,
    outcome: largest <= tolerance && enough ? 'passed' : 'failed',
    says: `${largest.toPrecision(2)}${unit} at most over ${both} points, allowed ${tolerance}${unit} (${because})`,
  }
}

/** Points over the range that tanks and formulas share: S 4 to 40, 0 to 35 °C, 0 to 1000 dbar. */
function seededPoints(count: number): readonly Point[] {
  let state = 20_260_101
  // Park & Miller's generator with the multiplier of 1993 (from memory): exact in doubles.
  const between = (low: number, high: number): number => {
    state = (state * 48_271) % 2_147_483_647
    return low + (high - low) * (state / 2_147_483_647)
  }
  return Array.from({ length: count }, () => ({
    S: between(4, 40),
    t: between(0, 35),
    p: between(0, 1000),
    C: between(20, 60),
  }))
}
