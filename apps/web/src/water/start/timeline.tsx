import type { Commissioning } from '@holdfast/commissioning'
import { useWidth } from '../../figure/use-width.ts'
import { shortDayText } from '../days.ts'
import { drawStart } from './marks.ts'

interface TimelineOf {
  readonly answer: Commissioning
  readonly timeZone: string
  /** What the picture shows, in words. */
  readonly label: string
}

/** The start-up on a line of days: what stood or will stand highest when, and when the first animals may come. */
export function Timeline({ answer, timeZone, label }: TimelineOf) {
  const [element, width] = useWidth<HTMLDivElement>(360)
  const { height, left, right, today, rows, ticks, shown } = drawStart(answer, width)
  const bottom = rows.at(-1)?.y ?? 0
  return (
    <figure ref={element} class="start-line">
      <svg
        class="picture"
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        role="img"
        aria-label={label}
      >
        {rows.map(({ key, title, y, middle, low, high, arrow, shape }) => (
          <g key={key} class={shape}>
            <text x={0} y={y + 5}>
              {title}
            </text>
            <line class="grid" x1={left} x2={right} y1={y} y2={y} />
            {high > low && <line class="span" x1={low} x2={high} y1={y} y2={y} />}
            {arrow !== undefined && <path class="beyond" d={`M${arrow - 7},${y - 5}l7,5l-7,5`} />}
            {middle !== undefined && (
              <path class="middle" d={shape === 'peak' ? mountain(middle, y) : diamond(middle, y)} />
            )}
          </g>
        ))}
        {ticks.map(({ day, x }) => (
          <text key={day} class="tick" x={x} y={height - 8} text-anchor="middle">
            {shortDayText(day, timeZone, shown)}
          </text>
        ))}
        <line class="today" x1={today} x2={today} y1={6} y2={bottom + 16} />
      </svg>
    </figure>
  )
}

const mountain = (x: number, y: number): string => `M${x - 7},${y + 5}l7,-12l7,12z`
const diamond = (x: number, y: number): string => `M${x},${y - 8}l8,8l-8,8l-8,-8z`
