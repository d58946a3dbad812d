import type { Step } from './integrate.ts'

/** States inside a step, by the cubic through both ends and their slopes; no lower than zero where they cannot be. */
export function between(step: Step, day: number, into: Float64Array): void {
  const width = step.to - step.from
  const t = (day - step.from) / width
  const a = (1 + 2 * t) * (1 - t) * (1 - t)
  const b = t * (1 - t) * (1 - t) * width
  const c = t * t * (3 - 2 * t)
  const d = t * t * (t - 1) * width
  for (let i = 0; i < into.length; i++)
    into[i] = a * step.before[i] + b * step.slopeBefore[i] + c * step.after[i] + d * step.slopeAfter[i]
}
