/** Every cause that a ladder knows; one line to add one. */
import type { CauseKey } from '../answer.ts'
import type { Standing } from '../standing.ts'
import { type Found, ranks } from './found.ts'
import { carriedIn, feed, overfed, silicate } from './inputs.ts'
import { growth, hungry, unreached } from './living.ts'
import { curing, cycling, poison } from './new-system.ts'
import {
  bodies,
  darkBed,
  darkScreen,
  loadedRock,
  oldFilter,
  skimmerOff,
  spentMedium,
  uncutBed,
} from './outlets.ts'
import { short } from './short.ts'
import { doseRisen, falling, salinity } from './too-fast.ts'

const all: readonly ((standing: Standing) => Found | undefined)[] = [
  poison,
  salinity,
  curing,
  cycling,
  short,
  falling,
  doseRisen,
  carriedIn('source_water'),
  silicate,
  carriedIn('salt'),
  carriedIn('dose'),
  spentMedium,
  darkBed,
  darkScreen,
  uncutBed,
  skimmerOff,
  oldFilter,
  bodies,
  overfed,
  loadedRock,
  feed,
  unreached,
  hungry,
  growth,
]

/** What brings in; of what else is broken, the share that it had to cope with of this is no fault of its own. */
const inlets: readonly CauseKey[] = ['source-water', 'salt', 'dose', 'overfed']

/** The causes that hold here, by rank and then by size. Feed as it is is none while something is broken or unfinished. */
export function causesOf(standing: Standing): readonly Found[] {
  const found = all.flatMap((cause) => cause(standing) ?? [])
  const isMended = !found.some(({ rank }) => ['danger', 'unfinished', 'fault'].includes(rank))
  const carried = Math.max(0, ...found.filter(({ key }) => inlets.includes(key)).map(({ size }) => size))
  const own = ({ key, size }: Found): number => (inlets.includes(key) ? size : size * (1 - carried))
  return found
    .filter(({ key }) => key !== 'feed' || isMended)
    .sort((a, b) => ranks.indexOf(a.rank) - ranks.indexOf(b.rank) || own(b) - own(a))
}
