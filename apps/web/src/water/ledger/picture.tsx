import type { DrawnPart, DrawnStream, RiverDrawing } from './rivers.ts'
import type { River } from './streams.ts'
import { isAt, type Spot } from './walk.ts'

/** Streams thinner than this are drawn as a dotted thread, since a surface of that width cannot be seen. */
const thread = 1.2

/** Draws one river. The sentence and the list beside it say the same to who cannot see it. */
export function RiverPicture({
  river,
  drawing,
  label,
  spot,
  onSpot,
}: {
  readonly river: River
  readonly drawing: RiverDrawing
  readonly label: string
  /** What the reader points at. */
  readonly spot: Spot | undefined
  readonly onSpot: (spot: Spot) => void
}) {
  const { basin } = drawing
  const at = (side: Spot['side'], account: string) => ({
    isPicked: isAt(spot, side, account),
    onPick: () => onSpot({ side, account }),
  })
  const hatch = `hatch-${river.atom}`
  return (
    <svg
      class={`picture river atom-${river.atom}`}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      width={drawing.width}
      height={drawing.height}
      role="img"
      aria-label={label}
    >
      <Hatch id={hatch} atom={river.atom} />
      {drawing.sources.map((drawn) => (
        <StreamShape
          key={drawn.stream.place.account}
          drawn={drawn}
          hatch={hatch}
          growing="up"
          {...at('source', drawn.stream.place.account)}
        />
      ))}
      {drawing.exports.map((drawn) => (
        <StreamShape
          key={drawn.stream.place.account}
          drawn={drawn}
          hatch={hatch}
          growing="down"
          {...at('export', drawn.stream.place.account)}
        />
      ))}
      <path
        class="vessel-ground"
        d={`M${basin.x},${basin.top}v${basin.height}h${basin.width}v${-basin.height}z`}
      />
      {drawing.parts.map((part) => (
        <PartShape
          key={part.basin.place.account}
          part={part}
          basin={basin}
          hatch={hatch}
          {...at('basin', part.basin.place.account)}
        />
      ))}
      <line class="level" x1={basin.x} x2={basin.x + basin.width} y1={basin.level} y2={basin.level} />
      <path class="vessel" d={`M${basin.x},${basin.top}v${basin.height}h${basin.width}v${-basin.height}`} />
    </svg>
  )
}

/** Nitrogen runs in lines, phosphorus in dots, so that they are told apart without colour. */
function Hatch({ id, atom }: { readonly id: string; readonly atom: River['atom'] }) {
  return (
    <defs>
      <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse">
        {atom === 'N' ? (
          <path class="hatch" d="M-1,7L7,-1M-1,1L1,-1M5,7L7,5" />
        ) : (
          <circle class="hatch-dot" cx="3" cy="3" r="1.1" />
        )}
      </pattern>
    </defs>
  )
}

/** A part of the picture that one can point at. */
interface Pickable {
  readonly isPicked: boolean
  readonly onPick: () => void
}

function StreamShape({
  drawn,
  hatch,
  growing,
  isPicked,
  onPick,
}: Pickable & {
  readonly drawn: DrawnStream
  readonly hatch: string
  readonly growing: 'up' | 'down'
}) {
  const { place, amount_umol } = drawn.stream
  const none = amount_umol <= 0
  const lines = growing === 'up' ? [...place.label].reverse() : place.label
  return (
    <g class={isPicked ? 'stream picked' : 'stream'} onPointerEnter={onPick} onPointerDown={onPick}>
      <path class="reach" d={drawn.reach} />
      {!none && drawn.width >= thread && place.dashed && (
        <>
          <path class="bank" d={drawn.high} />
          <path class="unexplained" d={drawn.middle} />
        </>
      )}
      {!none && drawn.width >= thread && !place.dashed && (
        <>
          <path class="bank" d={drawn.high} />
          <path class="flow" d={drawn.middle} />
          <path class="core" d={drawn.low} />
          <path d={drawn.low} fill={`url(#${hatch})`} />
        </>
      )}
      {!none && drawn.width < thread && <path class="thread" d={drawn.middle} />}
      {lines.map((line, i) => (
        <text
          key={line}
          class={none ? 'label none' : 'label'}
          x={drawn.labelX}
          y={drawn.labelY + (growing === 'up' ? -14 : 14) * i}
          text-anchor="middle"
        >
          {line}
        </text>
      ))}
    </g>
  )
}

function PartShape({
  part,
  basin: { top, height, level },
  hatch,
  isPicked,
  onPick,
}: Pickable & {
  readonly part: DrawnPart
  readonly basin: RiverDrawing['basin']
  readonly hatch: string
}) {
  const x = part.x + 5
  const width = Math.max(2, part.width - 10)
  const middle = part.x + part.width / 2
  return (
    <g class={isPicked ? 'part picked' : 'part'} onPointerEnter={onPick} onPointerDown={onPick}>
      <rect class="reach" x={part.x} y={top} width={part.width} height={height} />
      {part.rise > 0 && (
        <>
          <rect class="risen" x={x} y={level - part.rise} width={width} height={part.rise} />
          <rect x={x} y={level - part.rise} width={width} height={part.rise} fill={`url(#${hatch})`} />
        </>
      )}
      {part.fall > 0 && <rect class="fallen" x={x} y={level} width={width} height={part.fall} />}
      {Math.abs(part.highY - part.lowY) > 2 && (
        <path
          class="spread"
          d={`M${middle - 3},${part.highY}h6M${middle},${part.highY}V${part.lowY}M${middle - 3},${part.lowY}h6`}
        />
      )}
      <text class="label" x={middle} y={part.fall > 0 ? level - 7 : level + 17} text-anchor="middle">
        {part.basin.place.label[0]}
      </text>
    </g>
  )
}
