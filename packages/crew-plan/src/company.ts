import type { System, Vessel } from '@holdfast/ecosystem'
import { crewPools, type FactsOfSystem, finned, type Grazer, objections } from '@holdfast/facts'
import { limitOf, roomOf } from './candidates.ts'
import type { Numbers } from './crew-programme.ts'
import type { ProgrammeBuilder } from './programme.ts'

/** Like animals share room by their appetites; swimmers share the water by their volumes. */
export function room(
  programme: ProgrammeBuilder,
  numbers: readonly Numbers[],
  { system, home, facts }: { readonly system: System; readonly home: Vessel; readonly facts: FactsOfSystem },
): void {
  const eats = ({ animal }: Numbers): number => animal.consumption.typical
  for (const { title, groups, room: times } of crewPools()) {
    const members = numbers.filter(({ animal }) => groups.includes(animal.group))
    // What is there already has its room; one animal fits wherever it may live at all.
    const least = Math.max(0, ...members.filter(({ there }) => there === 0).map(eats))
    const shared = Math.max(
      least,
      facts.typical(times) *
        Math.max(0, ...members.map((one) => eats(one) * limitOf(one.animal, system, home))),
    )
    const held = members.reduce((sum, one) => sum + eats(one) * one.there, 0)
    programme.atMost(
      `room ${title}`,
      members.flatMap((one) => [[one.stay, eats(one)] as const, [one.come, eats(one)] as const]),
      Math.max(shared, held),
    )
  }
  const water = facts.typical('crew_plan.swimmers') * roomOf(home)
  const swimmers = numbers.filter(({ animal }) => swims(animal))
  const weight = ({ animal }: Numbers): number => Math.min(animal.volume_L.comfortable, water)
  const held = swimmers.reduce((sum, one) => sum + weight(one) * one.there, 0)
  programme.atMost(
    'room Swimmers',
    swimmers.flatMap((one) => [[one.stay, weight(one)] as const, [one.come, weight(one)] as const]),
    Math.max(water, held),
  )
}

/** Fish in no pool swim the whole water. */
export const swims = ({ group }: Grazer): boolean =>
  finned(group) && !crewPools().some(({ groups }) => groups.includes(group))

/** Who may not live together in this volume: at most one of each such pair, and of some at most one animal. */
export function company(programme: ProgrammeBuilder, numbers: readonly Numbers[], volume_L: number): void {
  const known = new Map<string, boolean>()
  const apart = (a: Numbers, b: Numbers): boolean => {
    const key = [a.animal.taxon, b.animal.taxon].sort().join(' and ')
    const told = known.get(key)
    if (told !== undefined) return told
    const said = objections({ animal: a.animal }, { animal: b.animal }).some(
      ({ rule, volume_L: from = 0 }) => rule === 'never' || (rule === 'only from volume' && volume_L < from),
    )
    known.set(key, said)
    return said
  }
  const present = new Map<Numbers, number>()
  const presence = (one: Numbers): number => {
    const there = present.get(one)
    if (there !== undefined) return there
    const { upper } = programme.columns[one.come]
    // Of whom one at most comes, its number says whether it is there.
    if (upper <= 1) return one.come
    const column = programme.column({ upper: 1, whole: true })
    programme.atMost(
      `present ${one.animal.taxon}`,
      [
        [one.come, 1],
        [column, -upper],
      ],
      0,
    )
    present.set(one, column)
    return column
  }
  const comers = numbers.filter(({ come }) => programme.columns[come].upper > 0)
  for (const one of comers)
    if (apart(one, one))
      programme.atMost(
        `company ${one.animal.taxon}`,
        [
          [one.come, 1],
          [one.stay, 1],
        ],
        Math.max(1, one.there),
      )
  for (const one of comers) {
    for (const there of numbers)
      if (there.there > 0 && there !== one && apart(one, there)) {
        const { upper } = programme.columns[one.come]
        programme.atMost(
          `company ${one.animal.taxon} and ${there.animal.taxon}`,
          [
            [one.come, 1 / upper],
            [there.stay, 1 / there.there],
          ],
          1,
        )
      }
  }
  for (const clique of cliques(comers, apart))
    programme.atMost(
      `company ${clique.map(({ animal }) => animal.taxon).join(', ')}`,
      clique.map((one) => [presence(one), 1] as const),
      1,
    )
}

/** Groups of animals of which no two may live together, so that every such pair is in one of them: tighter than pairs. */
function cliques(
  all: readonly Numbers[],
  apart: (a: Numbers, b: Numbers) => boolean,
): readonly (readonly Numbers[])[] {
  const found: Numbers[][] = []
  for (const [k, one] of all.entries())
    for (const other of all.slice(k + 1)) {
      if (!apart(one, other) || found.some((clique) => clique.includes(one) && clique.includes(other)))
        continue
      const clique = [one, other]
      for (const third of all)
        if (!clique.includes(third) && clique.every((each) => apart(third, each))) clique.push(third)
      found.push(clique)
    }
  return found
}
