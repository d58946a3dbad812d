import type { Day } from '@holdfast/ecosystem'
import { grouped } from '@holdfast/quantities'
import { scaleLinear } from 'd3-scale'
import { area, line } from 'd3-shape'
import { thousands } from '../../ways/counts.ts'
import { withMark } from '../../ways/decimal.ts'
import type { Span } from '../../worker/answers.ts'
import type { Planned } from '../planned.ts'
import type { Alternative } from './alternative.ts'
import { drawStrips, heightOfStrips, type Strip } from './strip.ts'
import type { Subject } from './subjects.ts'

/** Where everything of a fan lies, pixels. */
export interface FanDrawing {
  readonly width: number
  readonly height: number
  readonly plot: {
    readonly left: number
    readonly right: number
    readonly top: number
    readonly bottom: number
  }
  readonly wide: string
  readonly narrow: string
  readonly median: string
  readonly outlines: readonly Outline[]
  readonly strips: readonly Strip[]
  readonly today: number
  readonly band?: { readonly top: number; readonly height: number }
  readonly valueTicks: readonly { readonly y: number; readonly text: string }[]
  readonly dayTicks: readonly { readonly x: number; readonly day: Day }[]
  readonly planned: readonly { readonly x: number; readonly kind: Planned['kind'] }[]
  readonly points: readonly {
    readonly x: number
    readonly y: number
    readonly top: number
    readonly bottom: number
  }[]
  readonly hooks: readonly { readonly x: number; readonly path: string }[]
  readonly x: (day: Day) => number
  readonly y: (value: number) => number
}

/** What may come under other levers, from today on. */
export interface Outline {
  readonly mark: Alternative['mark']
  /** Ends of the 90 % band. */
  readonly edges: string
  readonly median: string
  /** Where its letter stands, beside the end of its median. */
  readonly letterY: number
}

export interface FanPlan {
  readonly subject: Subject
  /** The same under other levers, the ones in hand first. */
  readonly others?: readonly Other[]
  readonly shown: Span
  readonly asOf: Day
  readonly planned: readonly Planned[]
  readonly width: number
  /** Of the plot with its axis; strips come below. */
  readonly height: number
  /** Top of the scale in the fan's unit; kept while a lever moves, so that the ground stands still. */
  readonly ceiling: number
}

/** How far a hook hangs down from the limit of detection, pixels. */
export const hookLength = 11
const edge = { left: 44, right: 16, top: 14, bottom: 40 }
/** A letter beside the end of a median needs so much for itself. */
const letterHeight = 13

export interface Other {
  readonly mark: Alternative['mark']
  readonly subject: Subject
}

export function drawFan(plan: FanPlan): FanDrawing {
  const { subject, shown, width, others = [] } = plan
  const { factor } = subject
  const plot = {
    left: edge.left,
    right: width - edge.right,
    top: edge.top,
    bottom: plan.height - edge.bottom,
  }
  const x = scaleLinear([shown.from, shown.to], [plot.left, plot.right])
  const scale = scaleLinear([0, plan.ceiling * factor], [plot.bottom, plot.top]).nice(4)
  const y = (value: number) => Math.max(plot.top, Math.min(plot.bottom, scale(value * factor)))
  const seen = (day: Day) => day >= shown.from && day <= shown.to
  const between = (of: Subject, low: Quantile, high: Quantile) =>
    area<number>()
      .x((i) => x(of.fan.days[i] ?? 0))
      .y0((i) => y(of.fan.quantiles[low][i] ?? 0))
      .y1((i) => y(of.fan.quantiles[high][i] ?? 0))(steps(of, seen)) ?? ''
  const ahead = (day: Day) => seen(day) && day >= plan.asOf
  const along = (of: Subject, quantile: Quantile, within = seen) =>
    line<number>()
      .x((i) => x(of.fan.days[i] ?? 0))
      .y((i) => y(of.fan.quantiles[quantile][i] ?? 0))(steps(of, within)) ?? ''
  const readings = subject.readings.filter(({ reading }) => seen(reading.day))
  const { band } = subject
  const strips = drawStrips([{ subject }, ...others], plan.asOf, x, plan.height)
  return {
    width,
    height: plan.height + heightOfStrips(strips),
    plot,
    wide: between(subject, 'p05', 'p95'),
    narrow: between(subject, 'p25', 'p75'),
    median: along(subject, 'p50'),
    outlines: apart(
      others.map((other) => ({
        mark: other.mark,
        edges: along(other.subject, 'p05', ahead) + along(other.subject, 'p95', ahead),
        median: along(other.subject, 'p50', ahead),
        letterY: y(other.subject.fan.quantiles.p50.at(-1) ?? 0) + 4,
      })),
      plot,
    ),
    strips,
    today: x(plan.asOf),
    ...(band ? { band: { top: y(band.high), height: y(band.low) - y(band.high) } } : {}),
    valueTicks: scale
      .ticks(4)
      .map((tick) => ({ y: scale(tick), text: tickText(scale.tickFormat(4, 'f')(tick)) })),
    dayTicks: dayTicks(plan, x),
    planned: plan.planned.filter(({ day }) => seen(day)).map(({ day, kind }) => ({ x: x(day), kind })),
    points: readings
      .filter(({ reading }) => !reading.belowDetection)
      .map(({ reading, low, high }) => ({
        x: x(reading.day),
        y: y(reading.value),
        top: y(high),
        bottom: y(low),
      })),
    hooks: readings
      .filter(({ reading }) => reading.belowDetection)
      .map(({ reading }) => ({ x: x(reading.day), path: hook(x(reading.day), y(reading.value)) })),
    x,
    y,
  }
}

/** Thousands and decimals as the figures of the page have them: no comma that could be either. */
const tickText = (fixed: string): string =>
  withMark(fixed.replace(/^\d+/, (whole) => grouped(whole, thousands)))

/** Letters that would lie on each other are set under each other, in the order of their lines. */
function apart(outlines: readonly Outline[], { top, bottom }: FanDrawing['plot']): readonly Outline[] {
  const placed = new Map<Outline, number>()
  let free = top
  for (const outline of outlines
    .filter(({ mark }) => mark !== 'levers')
    .sort((a, b) => a.letterY - b.letterY)) {
    const y = Math.max(free, outline.letterY)
    placed.set(outline, y)
    free = y + letterHeight
  }
  const over = Math.max(0, free - letterHeight - bottom)
  return outlines.map((outline) => ({ ...outline, letterY: (placed.get(outline) ?? outline.letterY) - over }))
}

type Quantile = keyof Subject['fan']['quantiles']

const steps = (of: Subject, seen: (day: Day) => boolean) =>
  of.fan.days.flatMap((day, i) => (seen(day) ? [i] : []))

/** A bar at the limit and a short hook down from it: the truth is somewhere below. */
const hook = (x: number, limit: number) => `M${x - 4},${limit}h8M${x},${limit}v${hookLength - 4}q0,4 4,4`

/** Highest value that the scale must hold. */
export function ceilingOf(subject: Subject, shown: Span): number {
  const values = subject.fan.quantiles.p95.filter((_, i) => (subject.fan.days[i] ?? 0) >= shown.from)
  const readings = subject.readings.filter(({ reading }) => reading.day >= shown.from).map(({ high }) => high)
  return Math.max(
    ...values,
    ...readings,
    (subject.band?.high ?? 0) * 1.05,
    subject.fan.unit === 'share' ? 0.05 : 0.01,
  )
}

/** Whole weeks before and after today, as many as have room. */
function dayTicks({ asOf, shown, width }: FanPlan, x: (day: Day) => number): FanDrawing['dayTicks'] {
  const room = 64
  const weeks = Math.max(
    1,
    Math.ceil(((room / (width - edge.left - edge.right)) * (shown.to - shown.from)) / 7),
  )
  const step = 7 * weeks
  const first = asOf - Math.floor((asOf - shown.from) / step) * step
  const ticks: { x: number; day: Day }[] = []
  for (let day = first; day <= shown.to; day += step) {
    if (x(day) >= edge.left + 14 && x(day) <= width - edge.right - 18) ticks.push({ x: x(day), day })
  }
  return ticks
}
