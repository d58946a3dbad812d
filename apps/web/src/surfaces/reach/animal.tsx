import type { GrazerReach } from '@holdfast/reach'

const snail = 'M-7 4H7M-5 4a5.5 5.5 0 1 1 9 -4a3.5 3.5 0 1 1 -6 1a1.6 1.6 0 1 1 2.5 .5M5 4l3 -3'
const urchin = `M-4 0a4 4 0 1 0 8 0a4 4 0 1 0 -8 0${Array.from({ length: 10 }, (_, i) => {
  const [c, s] = [Math.cos(i * 0.628), Math.sin(i * 0.628)]
  return `M${(4 * c).toFixed(1)} ${(4 * s).toFixed(1)}L${(8 * c).toFixed(1)} ${(8 * s).toFixed(1)}`
}).join('')}`
const fish = 'M-8 0Q-2 -6 5 0L9 -4V4L5 0Q-2 6 -8 0M-5 -.6v.1'
const crab = 'M-5 1Q0 -6 5 1Q0 5 -5 1M-5 1l-4 3M5 1l4 3M-4 -1l-4 -4M4 -1l4 -4'
const slug = 'M-8 3Q-6 -3 0 -3T8 3ZM6 -1l2 -4'

const byGroup: Readonly<Partial<Record<GrazerReach['group'], string>>> = {
  snail,
  snail_scavenger: snail,
  conch: snail,
  limpet: slug,
  chiton: slug,
  abalone: slug,
  sea_slug: slug,
  sea_hare: slug,
  sea_cucumber: slug,
  hermit_crab: crab,
  crab,
  shrimp_non_grazer: crab,
  urchin,
  brittle_star: urchin,
}

interface AnimalOf {
  readonly group: GrazerReach['group']
  readonly x: number
  readonly y: number
  readonly isPicked: boolean
}

/** A small figure of a grazer; its name stands in the list beside the picture. */
export const Animal = ({ group, x, y, isPicked }: AnimalOf) => (
  <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`} class={isPicked ? 'animal picked' : 'animal'}>
    <path d={byGroup[group] ?? fish} />
  </g>
)
