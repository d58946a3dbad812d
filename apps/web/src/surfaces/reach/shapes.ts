import type { Surface, System, Vessel } from '@holdfast/ecosystem'

/** A point of an outline and the way from it into the water, a vector of length 1. */
export interface Edge {
  readonly x: number
  readonly y: number
  readonly nx: number
  readonly ny: number
}

/** An outline from its most open end to its most hidden one. */
export type Run = readonly Edge[]

/** A surface as it is drawn in its vessel. */
export interface Shape {
  readonly surface: Surface
  readonly runs: readonly Run[]
  /** Where its name stands. */
  readonly label: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'middle' | 'end' }
}

/** Inner size of a vessel, cm: where its length is not told, half again as long as it is wide and high. */
export function sizeOf({ glass_volume_L, volume_L, length_cm }: Vessel): {
  readonly length: number
  readonly height: number
} {
  const cm3 = 1000 * (glass_volume_L ?? volume_L)
  const length = length_cm ?? 1.5 * (cm3 / 1.5) ** (1 / 3)
  return { length, height: Math.sqrt(cm3 / length) }
}

/** Water stands so far under the rim. */
export const rim = 0.06
const points = 48

interface Box {
  readonly w: number
  readonly h: number
  readonly sand: number
}

/** Places a kind of surface in a vessel: the `k`th of `n` of its kind. */
type Draw = (box: Box, k: number, n: number) => Omit<Shape, 'surface'>

/** Straight or bent outlines: points of a curve with the water on its left hand as it goes on, or on its right. */
function along(at: (t: number) => readonly [number, number], water: 'left' | 'right', from = 0, to = 1): Run {
  const side = water === 'left' ? 1 : -1
  return Array.from({ length: points }, (_, i) => {
    const t = from + ((to - from) * i) / (points - 1)
    const [x, y] = at(t)
    const [ax, ay] = at(t - 1e-3)
    const [bx, by] = at(t + 1e-3)
    const long = Math.hypot(bx - ax, by - ay) || 1
    return { x, y, nx: (side * (by - ay)) / long, ny: (-side * (bx - ax)) / long }
  })
}

const slot = ({ w }: Box, k: number, n: number): { readonly middle: number; readonly half: number } => ({
  middle: (w * (k + 0.5)) / n,
  half: (0.31 * w) / n,
})

/** A mound, uneven as rock is and the same every time. */
const mound =
  ({ h, sand }: Box, middle: number, half: number, way: 1 | -1) =>
  (t: number): readonly [number, number] => {
    const turn = (t * Math.PI) / 2
    const uneven = 1 + way * 0.05 * Math.sin(7 * turn) + 0.03 * Math.sin(13 * turn)
    return [
      middle + way * half * uneven * Math.sin(turn),
      h - sand - 0.62 * (h - sand) * uneven * Math.cos(turn),
    ]
  }

const cave =
  ({ h, sand }: Box, middle: number, half: number, way: 1 | -1) =>
  (t: number): readonly [number, number] => {
    const turn = ((1 - t) * Math.PI) / 2
    return [middle + way * 0.62 * half * Math.sin(turn), h - sand - 0.3 * (h - sand) * Math.cos(turn)]
  }

const draws: Readonly<Record<Surface['kind'], Draw>> = {
  rock_face: (box, k, n) => {
    const { middle, half } = slot(box, k, n)
    return {
      runs: [along(mound(box, middle, half, -1), 'right'), along(mound(box, middle, half, 1), 'left')],
      label: { x: middle, y: box.h - box.sand - 0.43 * (box.h - box.sand), anchor: 'middle' },
    }
  },
  rock_underside: (box, k, n) => {
    const { middle, half } = slot(box, k, n)
    return {
      runs: [along(cave(box, middle, half, -1), 'right'), along(cave(box, middle, half, 1), 'left')],
      label: { x: middle, y: box.h - box.sand - 4, anchor: 'middle' },
    }
  },
  glass: ({ w, h, sand }, k, n) => {
    const down = (x: number) => (t: number) => [x, h * rim + t * (h - sand - h * rim)] as const
    return {
      runs: [along(down(0), 'left', k / n, (k + 1) / n), along(down(w), 'right', k / n, (k + 1) / n)],
      label: { x: 0, y: -6 - 15 * k, anchor: 'start' },
    }
  },
  sand: (box, k, n) => {
    const { w, h, sand } = box
    const { half } = slot(box, 0, 1)
    const left = (t: number) => [t * (w / 2 - half), h - sand] as const
    const right = (t: number) => [w - t * (w / 2 - half), h - sand] as const
    return {
      runs: [along(left, 'left', k / n, (k + 1) / n), along(right, 'right', k / n, (k + 1) / n)],
      label: { x: 0, y: h + 16 + 15 * k, anchor: 'start' },
    }
  },
  plumbing_overflow: ({ w, h }, k) => {
    const x = w - (k + 1) * 0.09 * w
    return {
      runs: [along((t) => [x, h * rim + t * 0.4 * h], 'left')],
      label: { x: w, y: -6 - 15 * k, anchor: 'end' },
    }
  },
  equipment: ({ w, h }, k, n) => {
    const [y, deep, long] = [h * (0.3 + (0.4 * k) / n), 0.09 * h, 0.06 * w]
    const corners = [
      [0, y],
      [long, y],
      [long, y + deep],
      [0, y + deep],
    ] as const
    return {
      runs: corners.slice(1).map(([bx, by], i) => {
        const [ax, ay] = corners[i] ?? [0, 0]
        return along((t) => [ax + t * (bx - ax), ay + t * (by - ay)], 'left')
      }),
      label: { x: long + 6, y: y + deep, anchor: 'start' },
    }
  },
  frag_rack: (box, k, n) => {
    const { middle, half } = slot(box, k, n)
    const y = 0.3 * box.h
    return {
      runs: [along((t) => [middle - half + 2 * half * t, y], 'left')],
      label: { x: middle, y: y + 16, anchor: 'middle' },
    }
  },
}

/** All surfaces of a vessel in a box of so many pixels. */
export function shapesIn(
  { surfaces, sand }: System,
  { id }: Vessel,
  { w, h, scale }: { readonly w: number; readonly h: number; readonly scale: number },
): readonly Shape[] {
  const within = surfaces.filter(({ vessel }) => vessel === id)
  const hasSand = within.some(({ kind }) => kind === 'sand')
  const box = { w, h, sand: hasSand ? Math.max(4, scale * (sand?.depth_cm ?? 2)) : 0 }
  return within.map((surface) => {
    const alike = within.filter(({ kind }) => kind === surface.kind)
    return { surface, ...draws[surface.kind](box, alike.indexOf(surface), alike.length) }
  })
}
