import type { Step } from './integrate.ts'

/** States inside a step, by the cubic through both ends and their slopes. */
export function between(step: Step, day: number, into: Float64Array): void {
  const { before, slopeBefore, after, slopeAfter } = step
  const { start, startSlope, end, endSlope } = weights(step, day)
  for (let i = 0; i < into.length; i++)
    into[i] = start * before[i] + startSlope * slopeBefore[i] + end * after[i] + endSlope * slopeAfter[i]
}

/** What has flowed from the start of a step to a day inside it, by the same cubic, so that books balance there too. */
export function flowsBetween(step: Step, day: number, into: Float64Array): void {
  const { flows, ratesBefore, ratesAfter } = step
  const { startSlope, end, endSlope } = weights(step, day)
  for (let k = 0; k < into.length; k++)
    into[k] = startSlope * ratesBefore[k] + end * flows[k] + endSlope * ratesAfter[k]
}

function weights({ from, to }: Step, day: number) {
  const width = to - from
  const t = (day - from) / width
  return {
    start: (1 + 2 * t) * (1 - t) * (1 - t),
    startSlope: t * (1 - t) * (1 - t) * width,
    end: t * t * (3 - 2 * t),
    endSlope: t * t * (t - 1) * width,
  }
}
