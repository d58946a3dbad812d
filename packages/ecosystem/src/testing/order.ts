import { Integrator, type Kernel } from '../integrate/index.ts'

/** States after `days` in so many equal steps: none may be shorter, so the error control has no say. */
export function fixedSteps(
  kernel: Kernel,
  start: ArrayLike<number>,
  days: number,
  steps: number,
): Float64Array {
  const length = days / steps
  const { memory } = kernel
  memory.set(memory.at.start, 0, Float64Array.from(start))
  // Quick processes keep their own steps, so strict that these have no part in what is measured.
  const integrator = new Integrator(kernel, false, { tolerance: 1e-7, longest: length, shortest: length })
  integrator.run(0, days, 1)
  return memory.get(memory.at.start, 0)
}

/** Slope of the error against the number of steps on logarithmic scales, least squares; reference by many steps. */
export function orderOf(
  run: (steps: number) => Float64Array,
  counts: readonly number[],
  reference: number,
): number {
  const truth = run(reference)
  const points = counts.map((steps) => {
    const result = run(steps)
    const error = Math.sqrt(
      truth.reduce((sum, value, i) => sum + ((result[i] - value) / (Math.abs(value) + 1e-3)) ** 2, 0),
    )
    return [Math.log(steps), Math.log(error)] as const
  })
  const mean = (k: 0 | 1): number => points.reduce((sum, point) => sum + point[k], 0) / points.length
  const [x, y] = [mean(0), mean(1)]
  const slope =
    points.reduce((sum, [px, py]) => sum + (px - x) * (py - y), 0) /
    points.reduce((sum, [px]) => sum + (px - x) ** 2, 0)
  return -slope
}
