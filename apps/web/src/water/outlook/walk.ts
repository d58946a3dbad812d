import type { Span } from '../../worker/answers.ts'
import type { Subject } from './subjects.ts'

/** The step nearest to one, of those that are shown. */
export function inShown(step: number, days: readonly number[], shown: Span): number {
  const first = days.findIndex((day) => day >= shown.from)
  let last = days.length - 1
  while (last > first && (days[last] ?? 0) > shown.to) last -= 1
  return Math.max(first, Math.min(last, step))
}

/** The step of the next reading that is shown, later or earlier; where there is none, the same step. */
export function readingNear({ fan, readings }: Subject, step: number, way: 1 | -1, shown: Span): number {
  const steps = readings
    .map(({ reading }) => reading.day)
    .filter((day) => day >= shown.from && day <= shown.to)
    .map((day) => stepOfDay(fan.days, day))
    .sort((a, b) => a - b)
  const found = way > 0 ? steps.find((one) => one > step) : steps.findLast((one) => one < step)
  return found ?? step
}

/** The step on whose day something was read: readings are made at some hour of it. */
export const stepOfDay = (days: readonly number[], day: number) =>
  Math.max(
    0,
    days.findIndex((one) => Math.floor(one) === Math.floor(day)),
  )

/** The step nearest to where the finger is. */
export function stepAtPointer(
  event: PointerEvent,
  x: (day: number) => number,
  days: readonly number[],
  shown: Span,
): number {
  const box = (event.currentTarget as HTMLElement).getBoundingClientRect()
  const at = event.clientX - box.left
  let best = 0
  days.forEach((day, i) => {
    if (Math.abs(x(day) - at) < Math.abs(x(days[best] ?? 0) - at)) best = i
  })
  return inShown(best, days, shown)
}
