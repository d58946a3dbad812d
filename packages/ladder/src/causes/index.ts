/** Every cause that a ladder knows; one line to add one. */
import type { Standing } from '../standing.ts'
import { type Found, ranks } from './found.ts'
import { carriedIn, feed, overfed } from './inputs.ts'
import { growth, hungry, unreached } from './living.ts'
import { curing, cycling, poison } from './new-system.ts'
import { bodies, darkBed, loadedRock, oldFilter, skimmerOff, spentMedium, uncutBed } from './outlets.ts'
import { short } from './short.ts'

const all: readonly ((standing: Standing) => Found | undefined)[] = [
  poison,
  curing,
  cycling,
  short,
  carriedIn('source_water'),
  carriedIn('salt'),
  carriedIn('dose'),
  spentMedium,
  darkBed,
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

/** The causes that hold here, by rank and then by size. */
export function causesOf(standing: Standing): readonly Found[] {
  return all
    .flatMap((cause) => cause(standing) ?? [])
    .sort((a, b) => ranks.indexOf(a.rank) - ranks.indexOf(b.rank) || b.size - a.size)
}
