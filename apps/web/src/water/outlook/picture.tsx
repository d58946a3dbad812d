import type { FanDrawing } from './fan.ts'
import type { Subject } from './subjects.ts'

export interface FanPicture {
  readonly subject: Subject
  readonly drawing: FanDrawing
  readonly label: string
  readonly dayText: (day: number) => string
  /** Day the reader points at. */
  readonly cursor?: number | undefined
}

/** Draws one fan from its geometry. */
export function FanPicture({ subject, drawing, label, dayText, cursor }: FanPicture) {
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
      {drawing.before && <path class="fan-before" d={drawing.before} />}
      <path class="fan-median" d={drawing.median} />
      <line class="today" x1={drawing.today} x2={drawing.today} y1={plot.top} y2={plot.bottom + 14} />
      {drawing.changes.map((x) => (
        <line key={x} class="change" x1={x} x2={x} y1={plot.bottom} y2={plot.bottom + 9} />
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
      {cursor !== undefined && <line class="cursor" x1={cursor} x2={cursor} y1={plot.top} y2={plot.bottom} />}
    </svg>
  )
}
