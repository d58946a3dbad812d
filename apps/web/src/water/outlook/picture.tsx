import type { Planned } from '../planned.ts'
import { type Alternative, letterOf } from './alternative.ts'
import type { FanDrawing } from './fan.ts'
import type { Strip } from './strip.ts'
import type { Subject } from './subjects.ts'

export interface FanPicture {
  readonly subject: Subject
  readonly drawing: FanDrawing
  readonly label: string
  readonly dayText: (day: number) => string
  /** Marks of outlines that are not yet those of the levers on the page. */
  readonly old: readonly Alternative['mark'][]
  /** Day the reader points at. */
  readonly cursor?: number | undefined
}

/** Draws one fan from its geometry. */
export function FanPicture({ subject, drawing, label, dayText, old, cursor }: FanPicture) {
  const { plot } = drawing
  return (
    <svg
      class={`picture fan atom-${subject.colour}`}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      width={drawing.width}
      height={drawing.height}
      role="img"
      aria-label={label}
    >
      {drawing.band && (
        <rect
          class="coral-band"
          x={plot.left}
          width={plot.right - plot.left}
          y={drawing.band.top}
          height={drawing.band.height}
        />
      )}
      {drawing.valueTicks.map((tick) => (
        <g key={tick.text}>
          <line class="grid" x1={plot.left} x2={plot.right} y1={tick.y} y2={tick.y} />
          <text class="tick" x={plot.left - 7} y={tick.y + 4} text-anchor="end">
            {tick.text}
          </text>
        </g>
      ))}
      {drawing.dayTicks.map((tick) => (
        <text key={tick.day} class="tick" x={tick.x} y={plot.bottom + 30} text-anchor="middle">
          {dayText(tick.day)}
        </text>
      ))}
      <path class="fan-wide" d={drawing.wide} />
      <path class="fan-narrow" d={drawing.narrow} />
      <path class="fan-median" d={drawing.median} />
      {drawing.outlines.map((outline) => (
        <g
          key={outline.mark}
          class={`outline outline-${outline.mark}${old.includes(outline.mark) ? ' outline-old' : ''}`}
        >
          <path class="outline-edges" d={outline.edges} />
          <path class="outline-median" d={outline.median} />
          <text class="letter" x={plot.right + 4} y={outline.letterY}>
            {letterOf(outline)}
          </text>
        </g>
      ))}
      <line class="today" x1={drawing.today} x2={drawing.today} y1={plot.top} y2={plot.bottom + 14} />
      {drawing.planned.map(({ x, kind }) => (
        <path key={`${kind}-${x}`} class={`planned planned-${kind}`} d={tick(kind, x, plot.bottom)} />
      ))}
      {drawing.hooks.map((hook) => (
        <path key={hook.x} class="hook" d={hook.path} />
      ))}
      {drawing.points.map((point) => (
        <g key={point.x} class="reading">
          <line x1={point.x} x2={point.x} y1={point.top} y2={point.bottom} />
          <circle cx={point.x} cy={point.y} r="3" />
        </g>
      ))}
      {drawing.strips.map((strip) => (
        <StripShape key={strip.mark ?? 'today'} strip={strip} old={old} today={drawing.today} />
      ))}
      {cursor !== undefined && <line class="cursor" x1={cursor} x2={cursor} y1={plot.top} y2={plot.bottom} />}
    </svg>
  )
}

/** A tick of its own for each kind of plan: a stroke for water, a stroke with a foot for media, a hollow one else. */
function tick(kind: Planned['kind'], x: number, y: number): string {
  if (kind === 'water') return `M${x},${y}v9`
  if (kind === 'media') return `M${x},${y}v6m-3,0h6v5h-6z`
  return `M${x},${y}v6m0,0l3,5h-6z`
}

/** Names of the strip, each with the pixels left of today that it needs. */
const stripNames = [
  { room: 190, name: 'Chance of being in band' },
  { room: 125, name: 'In band, by week' },
  { room: 0, name: 'In band' },
] as const

function StripShape({
  strip,
  old,
  today,
}: {
  readonly strip: Strip
  readonly old: readonly Alternative['mark'][]
  readonly today: number
}) {
  const { mark, top, height, weeks } = strip
  const bottom = top + height
  const room = stripNames.find((one) => today > one.room)
  const ofLevers = today > 125 ? 'with the levers' : 'levers'
  const name = mark === undefined ? room?.name : mark === 'levers' ? ofLevers : mark
  return (
    <g class={`strip${mark ? ` outline-${mark}` : ''}${mark && old.includes(mark) ? ' outline-old' : ''}`}>
      <text class="strip-name" x={today - 8} y={bottom - 5} text-anchor="end">
        {name}
      </text>
      {weeks.map(({ x, width, filled, text }) => (
        <g key={x}>
          <rect class="week-filled" x={x} y={bottom - filled} width={width} height={filled} />
          <rect class="week" x={x} y={top} width={width} height={height} />
          {text !== undefined && (
            <text class="tick" x={x + width / 2} y={bottom - 5.5} text-anchor="middle">
              {text}
            </text>
          )}
        </g>
      ))}
    </g>
  )
}
