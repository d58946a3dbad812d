import type { PlaceReach } from '@holdfast/reach'
import { cutAt, tuftAt } from './glyphs.ts'
import type { Edge, Run, Shape } from './shapes.ts'

/** What grows on one patch of a shape, as paths of a picture. */
export interface Fringe {
  readonly surface: string
  readonly patch: PlaceReach['patch']
  /** The outline of the patch itself. */
  readonly outline: string
  /** What stands after a week; what of it was eaten off. */
  readonly standing: string
  readonly eaten: string
  /** The middle of the patch, and the way into the water. */
  readonly middle: Edge
}

const order: readonly PlaceReach['patch'][] = ['open', 'half_hidden', 'hidden']
/** Between two tufts, px. */
const apart = 6
/** Growth that would be drawn shorter is not drawn. */
const least = 0.7

/**
 * The fringe of a shape: how high a tuft stands is how much grows on a square metre.
 *
 * @param places  what grows on its surface
 * @param perDensity  px for a gram of dry algae on a square metre
 */
export function fringesOf(
  { surface, runs }: Shape,
  places: readonly PlaceReach[],
  perDensity: number,
): readonly Fringe[] {
  let before = 0
  return order.flatMap((patch) => {
    const here = places.filter((place) => place.patch === patch)
    const share = (here[0]?.area_m2 ?? 0) / surface.area_m2
    const [from, to] = [before, before + share]
    before = to
    const cuts = runs.map((run) => cut(run, from, to)).filter((run) => run.length > 1)
    const middle = cuts[cuts.length - 1]?.[Math.floor((cuts[cuts.length - 1]?.length ?? 0) / 2)]
    if (share <= 0 || middle === undefined) return []
    const growing = here
      .map((place) => ({
        kind: place.kind,
        grown: (perDensity * place.growth_g_week.value) / place.area_m2,
        left: (perDensity * place.left_g_week.value) / place.area_m2,
      }))
      .filter(({ grown }) => grown >= least)
    const tufts = cuts.flatMap((run) =>
      growing.length === 0
        ? []
        : spaced(run).map((edge, i) => ({
            edge,
            i,
            ...(growing[i % growing.length] ?? { kind: '', grown: 0, left: 0 }),
          })),
    )
    return [
      {
        surface: surface.id,
        patch,
        middle,
        outline: cuts.map(lineOf).join(''),
        standing: tufts
          .map(({ edge, i, kind, left }) => tuftAt(kind, edge, Math.max(left, 1.2), Math.sin(i * 2.4)))
          .join(''),
        eaten: tufts
          .filter(({ grown, left }) => grown - left >= least)
          .map(({ edge, grown, left }) => cutAt(edge, Math.max(left, 1.2) + 1, grown + 1))
          .join(''),
      },
    ]
  })
}

const cut = (run: Run, from: number, to: number): Run =>
  run.slice(Math.floor(from * (run.length - 1)), Math.ceil(to * (run.length - 1)) + 1)

export const lineOf = (run: Run): string =>
  run.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')

/** Points of a run that stand evenly apart. */
function spaced(run: Run): Run {
  const found: Edge[] = []
  let walked = apart / 2
  for (const [i, edge] of run.entries()) {
    const next = run[i + 1]
    if (!next) break
    const long = Math.hypot(next.x - edge.x, next.y - edge.y)
    for (; walked < long; walked += apart) {
      const t = walked / long
      found.push({ ...edge, x: edge.x + t * (next.x - edge.x), y: edge.y + t * (next.y - edge.y) })
    }
    walked -= long
  }
  return found
}
