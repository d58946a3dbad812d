import type { Rock, RockKind, System } from '../system.ts'

/** Kinds of rock with pores wide enough for water and life inside; the others are dense. */
const porous: readonly RockKind[] = ['cured live', 'uncured live', 'dried ex-ocean']

/** Dead matter that a kind brings, by the part of the catalogue that tells how much. */
const deadMatter: Readonly<Partial<Record<RockKind, string>>> = {
  'uncured live': 'uncured',
  'dried ex-ocean': 'exocean',
}

/** Phosphate that a dried kind gives back; quarried and man-made rock takes phosphate up at first. */
const exchangeable: Readonly<Partial<Record<RockKind, string>>> = { 'dried ex-ocean': 'exocean' }

/** Kinds that bring living nitrifiers. */
const live: readonly RockKind[] = ['cured live', 'uncured live']

/** A kind of rock that a system has or that comes into it; `by` is its part of the catalogue. */
export interface KindOfRock {
  readonly kind: RockKind
  readonly by: string
}

const kindsOf = ({ rock }: System): readonly RockKind[] => [...new Set(rock.map(({ kind }) => kind))]

const among = (system: System, table: Readonly<Partial<Record<RockKind, string>>>): readonly KindOfRock[] =>
  kindsOf(system).flatMap((kind) => {
    const by = table[kind]
    return by === undefined ? [] : [{ kind, by }]
  })

export const withDeadMatter = (system: System): readonly KindOfRock[] => among(system, deadMatter)
export const withExchangeable = (system: System): readonly KindOfRock[] => among(system, exchangeable)

export const leaches = (system: System): boolean =>
  withDeadMatter(system).length + withExchangeable(system).length > 0

/** Nitrifiers that come with each kind, as a fact of their share of the most that rock carries. */
export const withNitrifiers = (system: System): readonly KindOfRock[] =>
  kindsOf(system).map((kind) => ({ kind, by: live.includes(kind) ? 'nit.seed_live' : 'nit.seed_aob' }))

/** Share of the mass of rock that is porous; 0 where there is no rock. */
export function porousRockShare(rock: readonly Rock[]): number {
  const mass = (rocks: readonly Rock[]): number => rocks.reduce((sum, { mass_kg }) => sum + mass_kg, 0)
  const all = mass(rock)
  return all > 0 ? mass(rock.filter(({ kind }) => porous.includes(kind))) / all : 0
}
