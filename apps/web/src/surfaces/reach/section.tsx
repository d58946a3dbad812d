import type { System, Vessel } from '@holdfast/ecosystem'
import { named } from '@holdfast/facts/names'
import type { GrazerReach, ReachAnswer } from '@holdfast/reach'
import { useMemo } from 'preact/hooks'
import { useWidth } from '../../figure/use-width.ts'
import { Animal } from './animal.tsx'
import { type Fringe, fringesOf, lineOf } from './fringe.ts'
import { rim, type Shape, shapesIn, sizeOf } from './shapes.ts'

interface SectionOf {
  readonly system: System
  readonly reach: ReachAnswer
  /** Weeks for which it is let grow at the rate of this one. */
  readonly weeks: number
  /** Whose range is shown. */
  readonly picked: GrazerReach | undefined
}

/** The most pixels for a centimetre, between vessels, and around them. */
const largest = 9
const gap = 32
const edge = { top: 26, right: 2, bottom: 24, left: 2 }
/** The longest hair, px, where it grows for a week. */
const longest = 22

/** The system cut through its vessels, to scale, with what grows along every surface. */
export function Section({ system, reach, weeks, picked }: SectionOf) {
  const [element, width] = useWidth<HTMLDivElement>(700)
  const sized = system.vessels.map((vessel) => ({ vessel, ...sizeOf(vessel) }))
  const whole = sized.reduce((sum, { length }) => sum + length, 0)
  const around = edge.left + edge.right
  const room = width - (gap + around) * (sized.length - 1) - around
  const widest = Math.max(...sized.map(({ length }) => length))
  const scale = Math.min(largest, Math.max(room / whole, Math.min(width - around, 560) / widest))
  const densest = Math.max(
    1e-9,
    ...reach.places.map(({ growth_g_week, area_m2 }) => growth_g_week.value / area_m2),
  )
  return (
    <div class="section" ref={element}>
      {sized.map(({ vessel, length, height }) => (
        <VesselCut
          key={vessel.id}
          vessel={vessel}
          system={system}
          reach={reach}
          picked={picked}
          box={{ w: length * scale, h: height * scale, scale }}
          perDensity={(weeks * longest) / densest}
        />
      ))}
    </div>
  )
}

interface VesselCutOf extends Omit<SectionOf, 'weeks'> {
  readonly vessel: Vessel
  readonly box: { readonly w: number; readonly h: number; readonly scale: number }
  readonly perDensity: number
}

function VesselCut({ vessel, system, reach, picked, box, perDensity }: VesselCutOf) {
  const { w, h } = box
  const shapes = useMemo(() => shapesIn(system, vessel, box), [system, vessel, w, h])
  const fringes = useMemo(
    () =>
      shapes.flatMap((shape) =>
        fringesOf(
          shape,
          reach.places.filter(({ surface }) => surface === shape.surface.id),
          perDensity,
        ),
      ),
    [shapes, reach, perDensity],
  )
  const inRange = ({ surface, patch }: Fringe): boolean =>
    picked?.gets.includes(`${surface} ${patch}`) ?? false
  return (
    <figure class="vessel-cut">
      <svg
        class="picture"
        width={w + edge.left + edge.right}
        height={h + edge.top + edge.bottom}
        viewBox={`${-edge.left} ${-edge.top} ${w + edge.left + edge.right} ${h + edge.top + edge.bottom}`}
        aria-hidden="true"
      >
        <rect class="vessel-ground" x={0} y={h * rim} width={w} height={h * (1 - rim)} />
        {shapes.map((shape) => (
          <Body key={shape.surface.id} shape={shape} box={box} />
        ))}
        <path class="vessel" d={`M0 0V${h}H${w}V0`} />
        {fringes.map((fringe) => (
          <g key={`${fringe.surface} ${fringe.patch}`}>
            <path class={inRange(fringe) ? 'edge in-range' : 'edge'} d={fringe.outline} />
            <path class="eaten-off" d={fringe.eaten} />
            <path class="tufts" d={fringe.standing} />
          </g>
        ))}
        {shapes.map(({ surface, label }) => (
          <text key={surface.id} class="tick" x={label.x} y={label.y} text-anchor={label.anchor}>
            {named(surface.id)}
          </text>
        ))}
        <Crew reach={reach} fringes={fringes} picked={picked} />
      </svg>
      <figcaption>{named(vessel.id)}</figcaption>
    </figure>
  )
}

/** Rock and boxes have a ground of their own. */
function Body({
  shape: { surface, runs },
  box: { w, h },
}: {
  readonly shape: Shape
  readonly box: { readonly w: number; readonly h: number }
}) {
  const [one, other] = runs
  if (surface.kind === 'rock_face' && one && other)
    return <path class="rock" d={`${lineOf([...one].reverse())}${lineOf(other).replace('M', 'L')}Z`} />
  if (surface.kind === 'rock_underside' && one && other)
    return <path class="cave" d={`${lineOf(one)}${lineOf([...other].reverse()).replace('M', 'L')}Z`} />
  if (surface.kind === 'sand') {
    const y = one?.[0]?.y ?? h
    return <rect class="sand" x={0} y={y} width={w} height={h - y} />
  }
  if (surface.kind === 'plumbing_overflow' && one)
    return <path class={surface.enclosed ? 'box combed' : 'box'} d={lineOf(one)} />
  return <path class="box" d={runs.map(lineOf).join('')} />
}

interface CrewOf {
  readonly reach: ReachAnswer
  readonly fringes: readonly Fringe[]
  readonly picked: GrazerReach | undefined
}

/** Each taxon where it feeds most, drawn once. */
function Crew({ reach, fringes, picked }: CrewOf) {
  const sitting = new Map<string, number>()
  return (
    <>
      {reach.grazers.map((grazer) => {
        const eats = (fringe: Fringe): number =>
          reach.places
            .filter(({ surface, patch }) => surface === fringe.surface && patch === fringe.patch)
            .flatMap(({ eaten }) => eaten)
            .reduce((sum, { taxon, g_week }) => sum + (taxon === grazer.taxon ? g_week : 0), 0)
        const [best] = fringes.toSorted((a, b) => eats(b) - eats(a))
        if (!best || eats(best) === 0) return null
        const key = `${best.surface} ${best.patch}`
        const before = sitting.get(key) ?? 0
        sitting.set(key, before + 1)
        const { x, y, nx, ny } = best.middle
        const off = 16 + 20 * before
        return (
          <Animal
            key={grazer.taxon}
            group={grazer.group}
            x={x + off * nx}
            y={y + off * ny}
            isPicked={grazer === picked}
          />
        )
      })}
    </>
  )
}
