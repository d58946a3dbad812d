import { floor, Sketch, width } from './sketch.tsx'

/** Places along the floor, and a sway that differs from place to place and is the same every time. */
const along = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ x: ((i + 0.5) * width) / count, sway: Math.sin(i * 2.4) }))

const each = (count: number, draw: (x: number, sway: number) => string): string =>
  along(count)
    .map(({ x, sway }) => draw(x, sway))
    .join('')

const ring = (x: number, y: number, r: number) =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`

/** How each kind of algae is drawn, by its growth form: kinds are told apart by it, never by colour alone. */
export const textures: Readonly<Record<string, string>> = {
  film_diatom: each(9, (x, sway) => `M${x - 3} ${floor - 1.5 + sway}h6`),
  film_green: each(18, (x, sway) => `M${x - 1} ${floor - 1.5 + sway}h1.6`),
  hair_green: each(16, (x, sway) => `M${x} ${floor}q${3 * sway} -7 ${sway} -13t${4 * sway} -10`),
  turf: each(26, (x, sway) => `M${x} ${floor}l${sway} ${-6 - sway}`),
  bryopsis: each(6, (x) =>
    [5, 9, 13, 17].reduce(
      (path, up) => `${path}M${x - 4} ${floor - up - 4}L${x} ${floor - up}l4 -4`,
      `M${x} ${floor}v-22`,
    ),
  ),
  bubble: each(7, (x, sway) => ring(x, floor - 5 - 1.5 * sway, 4 + sway)),
  red_cotton: each(3, (x) =>
    [-9, -5, -1, 3, 7].map((to) => `M${x} ${floor}q${to} -4 ${to / 2} -11t${to} -8`).join(''),
  ),
  red_turf: each(8, (x, sway) => `M${x} ${floor}v-8l-3 -5m3 5l3 -${5 + Math.abs(sway) * 3}`),
  cyano: `M0 ${floor - 4}${each(6, (x) => `Q${x} ${floor - 12} ${x + 6} ${floor - 4}`)}M0 ${floor - 1}H${width}`,
  dino: each(8, (x, sway) => `M${x} ${floor}q3 -5 0 ${-10 - 4 * sway}${ring(x, floor - 12 - 4 * sway, 1.4)}`),
  caulerpa: `M0 ${floor - 2}H${width}${each(6, (x, sway) => `M${x} ${floor - 2}q-7 -9 ${sway} -18q7 9 ${-sway} 18`)}`,
  macro: each(4, (x, sway) => `M${x - 3} ${floor}q-5 -12 ${2 + sway} -23q9 10 5 23`),
  brown_crust_lobe: each(4, (x) => `M${x - 8} ${floor}a8 6 0 0 1 16 0M${x - 4} ${floor}a4 3 0 0 1 8 0`),
  chrysophyte: `M0 ${floor - 3}${each(5, (x, sway) => `Q${x - 2} ${floor - 13 - 4 * sway} ${x + 7} ${floor - 3}`)}`,
  not_algae: each(4, (x, sway) =>
    [-6, -3, 0, 3, 6].map((to) => `M${x} ${floor - 9}q${to / 2} -5 ${to} ${-8 - sway}`).join(''),
  ).concat(each(4, (x) => `M${x - 2} ${floor}v-9h4v9`)),
  coralline: `M0 ${floor - 1}H${width}M0 ${floor - 4}H${width}${each(9, (x) => `M${x - 2} ${floor - 4}a2 2 0 0 1 4 0`)}`,
}

/** The texture of a kind of algae, as it grips. Its name stands beside it. */
export function Tuft({ algae }: { readonly algae: string }) {
  const path = textures[algae]
  return path === undefined ? null : <Sketch path={path} />
}
